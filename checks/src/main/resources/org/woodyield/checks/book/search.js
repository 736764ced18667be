"use strict";
// Finds the entries of BOOK, which search-index.js holds, that contain all words typed. Nothing is sent anywhere.
(function () {
  const most = 40;
  const field = document.getElementById("search-words");
  const found = document.getElementById("search-found");
  const count = document.getElementById("search-count");
  const plain = text => text.toLowerCase();
  const entries = BOOK.map(([href, title, words]) => ({ href, title, words, all: plain(title + " " + words) }));

  function show() {
    const words = plain(field.value).split(/\s+/).filter(Boolean);
    found.replaceChildren();
    if (words.length === 0) {
      count.textContent = "";
      return;
    }
    const hits = entries.filter(entry => words.every(word => entry.all.includes(word)));
    hits.sort((a, b) => rank(a, words) - rank(b, words));
    for (const hit of hits.slice(0, most)) {
      const item = document.createElement("li");
      const link = document.createElement("a");
      link.href = hit.href;
      link.textContent = hit.title;
      item.append(link, " ", hit.words);
      found.append(item);
    }
    count.textContent = hits.length + " found" + (hits.length > most ? ", the first " + most + " shown" : "");
  }

  function rank(entry, words) {
    const title = plain(entry.title);
    return words.every(word => title.includes(word)) ? 0 : 1;
  }

  document.getElementById("search").hidden = false;
  field.addEventListener("input", show);
})();
