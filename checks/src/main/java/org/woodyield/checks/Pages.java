package org.woodyield.checks;

import com.github.mustachejava.DefaultMustacheFactory;
import com.github.mustachejava.MustacheException;
import com.github.mustachejava.reflect.MissingWrapper;
import com.github.mustachejava.reflect.ReflectionObjectHandler;
import com.github.mustachejava.util.Wrapper;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;

/** Fills the templates of the book. Text is escaped; a name that nothing gives a value to is an error. */
final class Pages {

    private static final String FOLDER = "org/woodyield/checks/book";

    private final DefaultMustacheFactory templates = new DefaultMustacheFactory(FOLDER);

    Pages() {
        templates.setObjectHandler(new ReflectionObjectHandler() {
            @Override
            public Wrapper find(String name, List<Object> scopes) {
                Wrapper found = super.find(name, scopes);
                if (found instanceof MissingWrapper) {
                    throw new MustacheException("nothing gives a value to " + name);
                }
                return found;
            }
        });
    }

    /**
     * One page.
     *
     * @param template file name without its ending
     * @param content what its names stand for
     */
    String page(String template, Object content) {
        StringWriter out = new StringWriter();
        try {
            templates.compile(template + ".mustache").execute(out, content).flush();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toString();
    }
}
