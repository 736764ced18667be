/**
 * Wood yield and milling arithmetic that shows its working and names its sources.
 *
 * <p>The packages stand in the order in which a job flows; each reads only those before it. The command line lives in
 * {@code org.woodyield.job}, which is not exported; it alone needs the two optional libraries.
 */
module org.woodyield {
    requires static org.jspecify;
    requires static de.siegmar.fastcsv;
    requires static info.picocli;

    exports org.woodyield.source;
    exports org.woodyield.measure;
    exports org.woodyield.working;
    exports org.woodyield.wood;
    exports org.woodyield.log;
    exports org.woodyield.scaling;
    exports org.woodyield.lumber;
    exports org.woodyield.sawing;
    exports org.woodyield.work;
    exports org.woodyield.plan;
    exports org.woodyield.show;
}
