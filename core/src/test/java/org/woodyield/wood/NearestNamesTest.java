package org.woodyield.wood;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;

class NearestNamesTest {

    private static final List<String> NAMES =
            List.of("size", "length", "quantity", "species", "Denver, CO", "Boise, ID");

    @Test
    void slipsOfSpellingComeFirst() {
        assertThat(NearestNames.to("lenght", NAMES)).containsExactly("length");
        assertThat(NearestNames.to("speceis", NAMES)).containsExactly("species");
        assertThat(NearestNames.to("denvr", NAMES)).containsExactly("Denver, CO");
        assertThat(NearestNames.question("sise", NAMES)).isEqualTo("is size meant?");
    }

    @Test
    void aPartOfANameAndAnAbbreviationServeWhereNoSpellingIsNear() {
        assertThat(NearestNames.to("Boise", NAMES)).containsExactly("Boise, ID");
        assertThat(NearestNames.to("small", List.of("large-end", "small-end"))).containsExactly("small-end");
        assertThat(NearestNames.to("qty", NAMES)).containsExactly("quantity");
        assertThat(NearestNames.to("ytq", NAMES)).isEmpty();
        assertThat(NearestNames.to("qy", NAMES)).isEmpty();
        assertThat(NearestNames.question("colour", NAMES)).isEmpty();
    }

    @Property
    void editsAreADistance(
            @ForAll @StringLength(max = 6) @CharRange(from = 'a', to = 'c') String a,
            @ForAll @StringLength(max = 6) @CharRange(from = 'a', to = 'c') String b) {
        int edits = NearestNames.edits(a, b);
        assertThat(edits).isEqualTo(NearestNames.edits(b, a));
        assertThat(edits == 0).isEqualTo(a.equals(b));
        assertThat(edits).isBetween(Math.abs(a.length() - b.length()), Math.max(a.length(), b.length()));
    }
}
