/**
 * Measurements with JMH. Each class answers one question, has a baseline, takes seeded input and verifies its results
 * before it measures.
 */
package org.woodyield.bench;
