package org.woodyield.source;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class SourcesTest {

    @Test
    void theRegisterIsReadAndSaysWhatEachSourceIs() {
        assertThat(Sources.all()).isNotEmpty().doesNotHaveDuplicates();
        assertThat(Sources.get("trade").standing()).isEqualTo(Standing.COMMON_PRACTICE);
        assertThat(Sources.get("demo").standing()).isEqualTo(Standing.INVENTED);
        assertThat(Sources.get("international-inch").citation())
                .isEqualTo("National Bureau of Standards and others, Refinement of values for the yard and the pound,"
                        + " 1959, Federal Register 24 FR 5348");
        assertThatThrownBy(() -> Sources.get("nobody")).hasMessage("no source 'nobody' in the register");
        assertThatThrownBy(() -> Sources.all().clear()).isInstanceOf(UnsupportedOperationException.class);
    }

    @Test
    void theStandingIsShownUnlessPublishedOrGiven() {
        for (Standing standing : Standing.values()) {
            String citation = new Source("a-b", standing, "A", "T", "1999", "p. 3").citation();
            assertThat(citation).startsWith("A, T, 1999, p. 3");
            assertThat(citation.endsWith(" [" + standing.label() + "]"))
                    .isEqualTo(standing != Standing.PUBLISHED && standing != Standing.GIVEN);
        }
    }

    @Test
    void aPublicationNeedsAuthorAndEdition() {
        assertThatThrownBy(() -> new Source("a", Standing.PUBLISHED, "", "T", "1999", ""))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Source("a", Standing.SECONDHAND, "A", "T", "", ""))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Source("a", Standing.DERIVED, "", " ", "", ""))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Source("Not A Key", Standing.DERIVED, "", "T", "", ""))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aSourcedNumberIsFinite() {
        Source source = Sources.get("definition");
        assertThat(new Sourced(1.5, "%", source).value()).isEqualTo(1.5);
        assertThatThrownBy(() -> new Sourced(Double.NaN, "%", source)).isInstanceOf(IllegalArgumentException.class);
    }
}
