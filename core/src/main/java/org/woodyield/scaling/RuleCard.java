package org.woodyield.scaling;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.woodyield.measure.Domain;
import org.woodyield.measure.Rounding;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.source.Standing;

/** All about a published rule but its arithmetic. */
record RuleCard(
        String id,
        String name,
        List<Source> sources,
        Standing standing,
        DiameterAt diameterAt,
        Domain diameter,
        Domain length,
        Optional<Step> step,
        String rounding,
        List<RuleFlag> flags) {

    /** To multiples of so many board feet. */
    record Step(Rounding rounding, double boardFeet, Source source) {}

    static final String OTHER_LENGTH =
            "scale a log that is too long in two or more parts, and one that is too short by a rule or formula that takes"
                    + " it, such as smalian";

    /** The smallest log that the plain formulas are asked about, and the largest. */
    private static final Domain DIAMETER =
            new Domain("scaling diameter", "in", 4, 120, "measure the diameter inside bark again");

    private static final Domain LENGTH = new Domain("scaling length", "ft", 1, 60, OTHER_LENGTH);

    static RuleCard of(String id, String name, String source) {
        Source stated = Sources.get(source);
        return new RuleCard(
                id,
                name,
                List.of(stated),
                stated.standing(),
                DiameterAt.SMALL_END,
                DIAMETER,
                LENGTH,
                Optional.empty(),
                "Not rounded; the source states none.",
                List.of());
    }

    RuleCard also(String... moreSources) {
        List<Source> all = new ArrayList<>(sources);
        for (String source : moreSources) {
            all.add(Sources.get(source));
        }
        return new RuleCard(id, name, List.copyOf(all), standing, diameterAt, diameter, length, step, rounding, flags);
    }

    RuleCard standing(Standing weakest) {
        return new RuleCard(id, name, sources, weakest, diameterAt, diameter, length, step, rounding, flags);
    }

    RuleCard at(DiameterAt where) {
        return new RuleCard(id, name, sources, standing, where, diameter, length, step, rounding, flags);
    }

    RuleCard diameter(double least, double greatest, String remedy) {
        Domain domain = new Domain("scaling diameter", "in", least, greatest, remedy);
        return new RuleCard(id, name, sources, standing, diameterAt, domain, length, step, rounding, flags);
    }

    RuleCard length(double least, double greatest, String remedy) {
        Domain domain = new Domain("scaling length", "ft", least, greatest, remedy);
        return new RuleCard(id, name, sources, standing, diameterAt, diameter, domain, step, rounding, flags);
    }

    RuleCard rounded(double boardFeet, String source, String sentence) {
        Step to = new Step(Rounding.HALF_UP, boardFeet, Sources.get(source));
        return new RuleCard(
                id, name, sources, standing, diameterAt, diameter, length, Optional.of(to), sentence, flags);
    }

    RuleCard saying(String sentence) {
        return new RuleCard(id, name, sources, standing, diameterAt, diameter, length, step, sentence, flags);
    }

    RuleCard flags(RuleFlag... faults) {
        return new RuleCard(id, name, sources, standing, diameterAt, diameter, length, step, rounding, List.of(faults));
    }
}
