package org.woodyield.show;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

class MarkupTest {

    @Property
    void anyTextStaysTextAndAnyAttributeStaysAnAttribute(@ForAll String text) {
        String markup = new Markup().element("p", text, "title", text).toString();
        Element read = Xml.parse(markup).getDocumentElement();
        assertThat(Xml.children(read)).isEmpty();
        assertThat(read.getAttributes().getLength()).isLessThanOrEqualTo(1);
        long characters = text.codePoints().count();
        assertThat(read.getTextContent().codePoints().count()).isEqualTo(characters);
    }

    @Test
    void whatIsOpenIsNotFinished() {
        Markup markup = new Markup().open("p");
        assertThatThrownBy(markup::toString).hasMessageContaining("still open: [p]");
    }
}
