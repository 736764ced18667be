package org.woodyield.sawing;

/** Passes with what is handled beside them. */
record HandledPasses(PassCost passes, double guide, double turning, double loading) implements PassCost {

    @Override
    public double of(Stage stage, double meanWidthMetres, double lengthMetres) {
        return passes.of(stage, meanWidthMetres, lengthMetres);
    }
}
