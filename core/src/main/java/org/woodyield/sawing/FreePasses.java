package org.woodyield.sawing;

/** Passes that cost nothing. */
enum FreePasses implements PassCost {
    INSTANCE;

    @Override
    public double of(Stage stage, double meanWidthMetres, double lengthMetres) {
        return 0;
    }
}
