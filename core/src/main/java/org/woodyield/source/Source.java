package org.woodyield.source;

/**
 * What a number rests on.
 *
 * @param id short stable key, lower case with hyphens
 * @param standing how far it can be trusted
 * @param author author or agency; empty for {@link Standing#COMMON_PRACTICE}, {@link Standing#DERIVED}, {@link
 *     Standing#GIVEN} and {@link Standing#INVENTED}
 * @param title title of the publication, or a statement of what was derived, practised or invented
 * @param edition year or edition; empty where there is none
 * @param place table, section or page; empty where the whole is meant
 */
public record Source(String id, Standing standing, String author, String title, String edition, String place) {

    /**
     * Checks that the parts that every source needs are there.
     *
     * @throws IllegalArgumentException if id or title is blank, or a published source has no author or no edition
     */
    public Source {
        if (!id.matches("[a-z0-9]+(-[a-z0-9]+)*")) {
            throw new IllegalArgumentException("source id '" + id + "': lower case, digits and single hyphens only");
        }
        if (title.isBlank()) {
            throw new IllegalArgumentException("source " + id + " has no title");
        }
        boolean publication = standing == Standing.PUBLISHED || standing == Standing.SECONDHAND;
        if (publication && (author.isBlank() || edition.isBlank())) {
            throw new IllegalArgumentException("source " + id + " is a publication: author and edition are needed");
        }
    }

    /**
     * The citation on one line, with the standing in brackets unless it is published or a given value.
     *
     * @return for example {@code Purdue Extension, Log scaling, 2018, p. 3}
     */
    public String citation() {
        StringBuilder line = new StringBuilder();
        for (String part : new String[] {author, title, edition, place}) {
            if (!part.isBlank()) {
                line.append(line.isEmpty() ? "" : ", ").append(part);
            }
        }
        if (standing != Standing.PUBLISHED && standing != Standing.GIVEN) {
            line.append(" [").append(standing.label()).append(']');
        }
        return line.toString();
    }
}
