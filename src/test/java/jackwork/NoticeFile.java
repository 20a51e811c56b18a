package jackwork;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.SAXException;

/**
 * What stands in NOTICE: each library that is shipped, by what the build resolved and what the library says of itself. Run
 * {@link #main} after a build of the tests to renew it.
 *
 * <p>Made here and not by a plugin: those that do it know no libraries of the page, and would have a first use fetch more
 * than the program's own libraries.
 */
final class NoticeFile {

    static final Path FILE = Path.of("NOTICE");

    /** Written by the build: the jars that stand beside ours, as they lie in the local repository. */
    private static final Path RESOLVED = Path.of("target", "runtime-classpath");

    private static final Pattern PROPERTY = Pattern.compile("\\$\\{([^}]+)}");

    private static final String HEAD = """
            Jackwork
            Licensed under the Apache License, Version 2.0.

            Libraries that are shipped with it keep their own licences, as each says of itself. Each is a file by itself, whole,
            with the notices in it.
            """;

    private static final String PAGE = """

            Libraries within the page that it shows, bundled:
            """;

    private static final String FONT = """

            PDF pages embed Liberation Sans (SIL Open Font License 1.1), which comes inside PDFBox. SQLite, within
            sqlite-jdbc, is in the public domain.
            """;

    private NoticeFile() {}

    /** Writes the file anew. */
    public static void main(String[] arguments) throws IOException {
        Files.writeString(FILE, text());
    }

    /** A library in the local repository. */
    private record Library(Path repository, String group, String name, String version) {

        /** Of a jar at {@code …/NAME/VERSION/NAME-VERSION.jar}. */
        static Library of(Path jar) throws IOException {
            Path version = parent(jar);
            Path name = parent(version);
            Element pom = xml(version.resolve(name.getFileName() + "-" + version.getFileName() + ".pom"));
            Element above = child(pom, "parent");
            String own = text(pom, "groupId");
            String group = own == null && above != null ? text(above, "groupId") : own;
            if (group == null) {
                throw new IllegalStateException(jar + ": its pom has no groupId");
            }
            Path repository = parent(name);
            for (int i = group.split("\\.").length; i > 0; i--) {
                repository = parent(repository);
            }
            return new Library(
                    repository, group, String.valueOf(name.getFileName()), String.valueOf(version.getFileName()));
        }

        Path file(String kind) {
            return repository
                    .resolve(group.replace('.', '/'))
                    .resolve(name)
                    .resolve(version)
                    .resolve(name + "-" + version + kind);
        }

        /** As its pom says, or the nearest above it that says any. */
        String licence() throws IOException {
            Element pom = xml(file(".pom"));
            Element licences = child(pom, "licenses");
            if (licences != null) {
                List<String> names = new ArrayList<>();
                for (Element licence : children(licences, "license")) {
                    names.add(String.valueOf(text(licence, "name")));
                }
                return String.join(" or ", names);
            }
            Element above = child(pom, "parent");
            if (above == null) {
                throw new IllegalStateException(file(".pom") + ": neither it nor any above it names a licence");
            }
            return new Library(
                            repository,
                            String.valueOf(text(above, "groupId")),
                            String.valueOf(text(above, "artifactId")),
                            String.valueOf(text(above, "version")))
                    .licence();
        }

        String line() throws IOException {
            return group + ":" + name + " " + version + ", " + licence() + "\n";
        }
    }

    static String text() throws IOException {
        String[] jars = Files.readString(RESOLVED).strip().split(Pattern.quote(File.pathSeparator));
        SortedSet<String> shipped = new TreeSet<>();
        Path repository = null;
        for (String jar : jars) {
            Library library = Library.of(Path.of(jar));
            repository = library.repository();
            shipped.add(library.line());
        }
        if (repository == null) {
            throw new IllegalStateException(RESOLVED + " names no library");
        }
        SortedSet<String> bundled = new TreeSet<>();
        Map<String, SortedSet<String>> terms = new TreeMap<>();
        for (Library library : bundled(repository)) {
            bundled.add(library.line());
            String said = terms(library.file(".jar"));
            if (!said.isEmpty()) {
                terms.computeIfAbsent(said, none -> new TreeSet<>()).add(library.name());
            }
        }
        StringBuilder text = new StringBuilder(HEAD).append('\n');
        shipped.forEach(text::append);
        text.append(PAGE).append('\n');
        bundled.forEach(text::append);
        text.append(FONT);
        terms.forEach((said, names) -> text.append("\nThe terms of ")
                .append(String.join(", ", names))
                .append(":\n\n")
                .append(said)
                .append('\n'));
        return text.toString();
    }

    /** What the bundler is given, in pom.xml. */
    private static List<Library> bundled(Path repository) throws IOException {
        Element project = xml(Path.of("pom.xml"));
        Map<String, String> properties = new LinkedHashMap<>();
        for (Element property : children(need(project, "properties"), null)) {
            properties.put(property.getTagName(), property.getTextContent().strip());
        }
        List<Library> libraries = new ArrayList<>();
        for (Element plugin : children(need(need(project, "build"), "plugins"), "plugin")) {
            Element given = child(plugin, "dependencies");
            if (given != null && "esbuild-maven-plugin".equals(text(plugin, "artifactId"))) {
                for (Element library : children(given, "dependency")) {
                    Matcher version = PROPERTY.matcher(String.valueOf(text(library, "version")));
                    libraries.add(new Library(
                            repository,
                            String.valueOf(text(library, "groupId")),
                            String.valueOf(text(library, "artifactId")),
                            version.replaceAll(found -> String.valueOf(properties.get(found.group(1))))));
                }
            }
        }
        return libraries;
    }

    /** The text of its licence, from the file of that name nearest to the jar's root; nothing where it has none. */
    private static String terms(Path jar) throws IOException {
        try (ZipFile zip = new ZipFile(jar.toFile())) {
            ZipEntry nearest = null;
            for (ZipEntry entry : zip.stream().map(ZipEntry.class::cast).toList()) {
                boolean its = entry.getName().matches("(?i)(.*/)?licen[cs]e(\\.(txt|md))?");
                if (its
                        && (nearest == null
                                || entry.getName().length() < nearest.getName().length())) {
                    nearest = entry;
                }
            }
            if (nearest == null) {
                return "";
            }
            try (InputStream in = zip.getInputStream(nearest)) {
                return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                        .replace("\r\n", "\n")
                        .strip();
            }
        }
    }

    private static Path parent(Path path) {
        Path parent = path.getParent();
        if (parent == null) {
            throw new IllegalStateException(path + " lies in no local repository");
        }
        return parent;
    }

    private static Element xml(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(in)
                    .getDocumentElement();
        } catch (ParserConfigurationException | SAXException e) {
            throw new IOException(file + " cannot be read", e);
        }
    }

    private static Element need(Element in, String name) {
        Element found = child(in, name);
        if (found == null) {
            throw new IllegalStateException("pom.xml has no " + name);
        }
        return found;
    }

    private static @Nullable Element child(Element in, String name) {
        List<Element> found = children(in, name);
        return found.isEmpty() ? null : found.get(0);
    }

    /** Those straight below; all where no name is given. */
    private static List<Element> children(Element in, @Nullable String name) {
        List<Element> found = new ArrayList<>();
        for (Node node = in.getFirstChild(); node != null; node = node.getNextSibling()) {
            if (node instanceof Element element
                    && (name == null || element.getTagName().equals(name))) {
                found.add(element);
            }
        }
        return found;
    }

    private static @Nullable String text(Element in, String name) {
        Element found = child(in, name);
        return found == null ? null : found.getTextContent().strip().replaceAll("\\s+", " ");
    }
}
