package org.woodyield.working;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Marks a public calculation: it has a {@link Working}, and checks against published values or a place in the list of
 * those that have none.
 */
@Documented
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.METHOD, ElementType.TYPE})
public @interface Calculation {

    /**
     * The key under which checks and the check book find it, for example {@code scaling.doyle}.
     *
     * @return package, dot, name
     */
    String value();
}
