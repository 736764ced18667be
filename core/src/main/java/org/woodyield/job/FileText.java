package org.woodyield.job;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;

/** Decodes a file strictly as UTF-8; a byte order mark at its start is dropped. */
final class FileText {

    private static final String REMEDY = "save it as UTF-8 (in a spreadsheet: CSV UTF-8)";

    private FileText() {}

    /**
     * The bytes of a file.
     *
     * @throws BadInputException with the reason, if it is there and cannot be read
     */
    static byte[] bytes(Path path) throws NoSuchFileException {
        try {
            return Files.readAllBytes(path);
        } catch (NoSuchFileException e) {
            throw e;
        } catch (IOException e) {
            String why = Files.isDirectory(path)
                    ? "it is a folder; put a file of this name there, or take the folder away"
                    : e instanceof AccessDeniedException
                            ? "no permission; let yourself read it, or copy it to a folder of your own"
                            : e.getMessage() + "; copy it to another place and try again";
            throw new BadInputException("'" + path + "' cannot be read: " + why);
        }
    }

    static Optional<String> decode(String file, byte[] bytes, Problems problems) {
        if (bytes.length >= 2
                && ((bytes[0] == (byte) 0xFF && bytes[1] == (byte) 0xFE)
                        || (bytes[0] == (byte) 0xFE && bytes[1] == (byte) 0xFF))) {
            problems.add(file, 0, "", "UTF-16", "text in UTF-8", REMEDY);
            return Optional.empty();
        }
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length + 1);
        CoderResult result = decoder.decode(in, out, true);
        out.flip();
        String text = out.toString();
        if (result.isError()) {
            int line = (int) text.lines().count() + (text.isEmpty() || text.endsWith("\n") ? 1 : 0);
            problems.add(
                    file,
                    line,
                    "",
                    String.format(java.util.Locale.ROOT, "byte 0x%02x", bytes[in.position()]),
                    "text in UTF-8",
                    REMEDY);
            return Optional.empty();
        }
        if (text.indexOf('\0') >= 0) {
            problems.add(file, 0, "", "a zero byte", "text in UTF-8", REMEDY);
            return Optional.empty();
        }
        return Optional.of(text.startsWith("\uFEFF") ? text.substring(1) : text);
    }
}
