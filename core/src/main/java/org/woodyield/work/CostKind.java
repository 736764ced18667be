package org.woodyield.work;

/** A kind of cost of sawing. */
public enum CostKind {
    /** Fuel. */
    FUEL("fuel", true),
    /** Bar oil. */
    BAR_OIL("bar oil", true),
    /** Two-stroke oil. */
    MIX_OIL("two-stroke oil", true),
    /** Chains or blades used up. */
    EDGES("chains or blades", true),
    /** Repairs and maintenance. */
    REPAIRS("repairs", true),
    /** The logs. */
    LOGS("logs", true),
    /** Wages, or own work at what it is held to be worth. */
    WORK("work", true),
    /** Loss of worth of the saw. */
    DEPRECIATION("depreciation", false),
    /** What else is spent before the first board, written off in full over the life of the saw. */
    OTHER_OUTLAY("other outlay", false),
    /** Interest, insurance and taxes on the saw and on what else is spent before the first board. */
    INTEREST("interest, insurance and taxes", false);

    private final String label;
    private final boolean running;

    CostKind(String label, boolean running) {
        this.label = label;
        this.running = running;
    }

    /**
     * In words.
     *
     * @return a short phrase
     */
    public String label() {
        return label;
    }

    /**
     * Whether it comes with the sawing, beside the outlay; the others are the outlay spread over the hours.
     *
     * @return true for a running cost
     */
    public boolean running() {
        return running;
    }
}
