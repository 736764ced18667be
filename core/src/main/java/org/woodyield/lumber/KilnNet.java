package org.woodyield.lumber;

import java.util.List;
import org.woodyield.measure.Domain;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.source.PublishedTable;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * What is left of a tally taken green when the lumber is sold kiln-dried by the same tally: net = gross * (1 - p / 100). The share
 * that is taken off is a custom of sellers, no law of wood; it is a parameter with a source.
 *
 * @param id short name
 * @param percent taken off, 0 to 15 %
 * @param source who takes it off
 */
public record KilnNet(String id, double percent, Source source) {

    private static final Domain PERCENT = Domain.of("taken off for drying", "%", 0, 15);
    private static final Domain GROSS = Domain.notNegative("gross tally", "bf");
    private static final List<KilnNet> CUSTOMS = PublishedTable.read(KilnNet.class, "kiln_net.csv").rows().stream()
            .map(row -> new KilnNet(row.text("id"), row.number("percent"), Sources.get(row.text("source"))))
            .toList();

    /**
     * Checks the share.
     *
     * @throws OutOfDomainException if it is outside
     */
    public KilnNet {
        PERCENT.require(percent);
    }

    /**
     * The customs that were read.
     *
     * @return an immutable list
     */
    public static List<KilnNet> customs() {
        return CUSTOMS;
    }

    /**
     * The net tally.
     *
     * @param grossBoardFeet tallied green, zero or more
     * @return board feet, not rounded
     * @throws OutOfDomainException if the gross tally is below zero
     */
    @Calculation("lumber.kiln-net")
    public double net(double grossBoardFeet) {
        return GROSS.require(grossBoardFeet) * (1 - percent / 100);
    }

    /**
     * How {@link #net} came about.
     *
     * @param grossBoardFeet tallied green, zero or more
     * @return the working; its value equals the net tally bit for bit
     * @throws OutOfDomainException if the gross tally is below zero
     */
    public Working netWorking(double grossBoardFeet) {
        return Working.of("Net tally after kiln drying")
                .given("G", "gross tally", GROSS.require(grossBoardFeet), "bf")
                .constant("p", "taken off", percent, "%", source)
                .step("N", "net tally", "G * (1 - p / 100)", "bf", Sources.get("definition"))
                .note("A custom: say in the contract which tally is meant. Footage may not be added back (NCWM 1977).")
                .build();
    }
}
