package org.woodyield.checks;

import com.sun.source.tree.BinaryTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.ConditionalExpressionTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.NewClassTree;
import com.sun.source.tree.ParenthesizedTree;
import com.sun.source.tree.ReturnTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.UnaryTree;
import com.sun.source.tree.VariableTree;
import com.sun.source.tree.YieldTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePath;
import com.sun.source.util.TreePathScanner;
import com.sun.source.util.Trees;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javax.tools.FileObject;
import javax.tools.ForwardingJavaFileManager;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileManager;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;

/**
 * Numbers in core's classes that take part in arithmetic: every decimal one, and whole ones from 3 upward that a decimal
 * expression, a constructor or a method takes. Limits of a domain are no constants of a formula and are left out; so are
 * examples of a flag, and the search for the best pattern, which rests on no publication.
 */
final class SourceNumbers {

    private static final JavaCompiler COMPILER = ToolProvider.getSystemJavaCompiler();

    /** Their arguments are limits of what is taken, examples of a flag, or places in a text. */
    private static final Set<String> NO_FORMULA = Set.of(
            "Domain",
            "Domain.of",
            "WorkInput",
            "diameter",
            "length",
            "cuttingAdds",
            "givesNothing",
            "fallsWithDiameter",
            "fallsWithLength",
            "ArrayList",
            "substring",
            "charAt");

    private SourceNumbers() {}

    /**
     * The numbers of one package.
     *
     * @param sources the root of core's sources
     * @param pack the package's folder below {@code org/woodyield}
     */
    static List<Change> of(Path sources, String pack) throws IOException {
        List<Change> changes = new ArrayList<>();
        Path root = sources.resolve("org/woodyield");
        try (var files = Files.list(root.resolve(pack))) {
            for (Path file : (Iterable<Path>) files.sorted()::iterator) {
                if (file.toString().endsWith(".java") && !file.endsWith("package-info.java")) {
                    String name = root.relativize(file).toString().replace('\\', '/');
                    String text = Files.readString(file);
                    if (!pack.equals("sawing") || text.contains("@Calculation(")) {
                        changes.addAll(of(name, text));
                    }
                }
            }
        }
        return changes;
    }

    private static List<Change> of(String name, String text) throws IOException {
        JavacTask task = task(name, text, new InMemory(new HashMap<>()));
        List<Change> changes = new ArrayList<>();
        Map<String, Integer> counts = new HashMap<>();
        for (CompilationUnitTree unit : task.parse()) {
            new TreePathScanner<Void, Void>() {
                @Override
                public Void visitLiteral(LiteralTree literal, Void none) {
                    if (stands(literal, getCurrentPath())) {
                        var positions = Trees.instance(task).getSourcePositions();
                        int start = Math.toIntExact(positions.getStartPosition(unit, literal));
                        int end = Math.toIntExact(positions.getEndPosition(unit, literal));
                        String from = text.substring(start, end);
                        if (from.startsWith("0x")) {
                            return null;
                        }
                        changes.add(new Change(
                                Change.Sort.CLASS,
                                name,
                                from,
                                counts.merge(from, 1, Integer::sum),
                                Math.toIntExact(unit.getLineMap().getLineNumber(start)),
                                start,
                                from,
                                Change.nudged(from.replace("_", ""))));
                    }
                    return null;
                }
            }.scan(unit, null);
        }
        return changes;
    }

    private static boolean stands(LiteralTree literal, TreePath path) {
        boolean decimal = literal.getKind() == Tree.Kind.DOUBLE_LITERAL;
        boolean whole = literal.getKind() == Tree.Kind.INT_LITERAL && ((Number) literal.getValue()).intValue() >= 3;
        if (!whole && !(decimal && ((Number) literal.getValue()).doubleValue() != 0)) {
            return false;
        }
        TreePath at = path.getParentPath();
        while (at.getLeaf() instanceof UnaryTree || at.getLeaf() instanceof ParenthesizedTree) {
            at = at.getParentPath();
        }
        Tree parent = at.getLeaf();
        if (isLimit(parent)) {
            return false;
        }
        return parent instanceof BinaryTree
                || parent instanceof MethodInvocationTree
                || parent instanceof NewClassTree
                || parent instanceof ReturnTree
                || parent instanceof YieldTree
                || parent instanceof ConditionalExpressionTree
                || parent instanceof VariableTree;
    }

    private static boolean isLimit(Tree parent) {
        if (parent instanceof NewClassTree made) {
            return NO_FORMULA.contains(made.getIdentifier().toString());
        }
        if (parent instanceof MethodInvocationTree called) {
            String name = called.getMethodSelect().toString();
            return NO_FORMULA.contains(name) || NO_FORMULA.contains(name.substring(name.lastIndexOf('.') + 1));
        }
        return false;
    }

    /** Bytes of the classes of one changed file; empty if it does not compile. */
    static Map<String, byte[]> compiled(String name, String text) {
        Map<String, ByteArrayOutputStream> out = new HashMap<>();
        if (!task(name, text, new InMemory(out)).call()) {
            return Map.of();
        }
        Map<String, byte[]> classes = new HashMap<>();
        out.forEach((type, bytes) -> classes.put(type.replace('.', '/') + ".class", bytes.toByteArray()));
        return classes;
    }

    private static JavacTask task(String name, String text, JavaFileManager files) {
        JavaFileObject source =
                new SimpleJavaFileObject(URI.create("string:///org/woodyield/" + name), JavaFileObject.Kind.SOURCE) {
                    @Override
                    public CharSequence getCharContent(boolean ignoreEncodingErrors) {
                        return text;
                    }
                };
        return (JavacTask) COMPILER.getTask(
                null,
                files,
                diagnostic -> {},
                List.of(
                        "-proc:none",
                        "-Xlint:none",
                        "-implicit:none",
                        "-classpath",
                        System.getProperty("java.class.path")),
                null,
                List.of(source));
    }

    /** Reads as usual and keeps what is written. */
    private static final class InMemory extends ForwardingJavaFileManager<JavaFileManager> {
        private static final JavaFileManager SHARED =
                COMPILER.getStandardFileManager(null, null, StandardCharsets.UTF_8);

        private final Map<String, ByteArrayOutputStream> out;

        InMemory(Map<String, ByteArrayOutputStream> out) {
            super(SHARED);
            this.out = out;
        }

        @Override
        public JavaFileObject getJavaFileForOutput(
                Location location, String type, JavaFileObject.Kind kind, FileObject sibling) {
            return new SimpleJavaFileObject(URI.create("mem:///" + type.replace('.', '/') + kind.extension), kind) {
                @Override
                public OutputStream openOutputStream() {
                    return out.computeIfAbsent(type, any -> new ByteArrayOutputStream());
                }
            };
        }

        @Override
        public void close() {
            // The shared manager serves all compilations.
        }
    }
}
