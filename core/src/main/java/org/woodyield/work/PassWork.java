package org.woodyield.work;

/**
 * What one pass takes.
 *
 * @param areaSquareMetres face of the kerf, one side
 * @param time its minutes, rest included
 * @param use fuel, oil and wear
 */
public record PassWork(double areaSquareMetres, TimeBreakdown time, FuelUse use) {}
