package org.woodyield.show;

import java.util.ArrayDeque;
import java.util.Deque;

/**
 * Writes XML that is well formed by construction: names come from this package, everything else is escaped, and what was
 * opened is closed in order. The same text serves as HTML, where the two syntaxes agree.
 */
final class Markup {

    private final StringBuilder text = new StringBuilder();
    private final Deque<String> open = new ArrayDeque<>();

    /** Attributes are pairs of name and value; a pair with an empty value is left out. */
    Markup open(String element, String... attributes) {
        tag(element, attributes);
        text.append('>');
        open.push(element);
        return this;
    }

    Markup close() {
        text.append("</").append(open.pop()).append('>');
        return this;
    }

    /** Closes and begins a new line, to keep the file readable. */
    Markup closeLine() {
        close();
        text.append('\n');
        return this;
    }

    Markup empty(String element, String... attributes) {
        tag(element, attributes);
        text.append("/>");
        return this;
    }

    Markup text(String value) {
        text.append(escape(value));
        return this;
    }

    Markup line() {
        text.append('\n');
        return this;
    }

    Markup element(String element, String content, String... attributes) {
        return open(element, attributes).text(content).close();
    }

    /** What another writer has finished. */
    Markup add(Markup finished) {
        text.append(finished);
        return this;
    }

    /** Markup that this package wrote and closed; never text of a user. */
    Markup trusted(String finished) {
        text.append(finished);
        return this;
    }

    private void tag(String element, String... attributes) {
        text.append('<').append(element);
        for (int i = 0; i < attributes.length; i += 2) {
            if (!attributes[i + 1].isEmpty()) {
                text.append(' ').append(attributes[i]).append("=\"");
                text.append(escape(attributes[i + 1])).append('"');
            }
        }
    }

    /** A character that XML does not know, a control or half a surrogate pair, becomes the replacement character. */
    static String escape(String value) {
        StringBuilder out = new StringBuilder(value.length() + 16);
        value.codePoints().forEach(c -> {
            switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                case '\'' -> out.append("&#39;");
                default -> {
                    boolean control = c < 0x20 && c != '\n' && c != '\t';
                    boolean outside = (c >= 0xD800 && c <= 0xDFFF) || c == 0xFFFE || c == 0xFFFF;
                    boolean odd = c >= 0x7F && c < 0xA0;
                    out.appendCodePoint(control || outside || odd ? 0xFFFD : c);
                }
            }
        });
        return out.toString();
    }

    @Override
    public String toString() {
        if (!open.isEmpty()) {
            throw new IllegalStateException("still open: " + open);
        }
        return text.toString();
    }
}
