package drawwell.fhir;

import static org.junit.Assert.assertEquals;
import static org.junit.Assert.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.hl7.fhir.r4.model.Bundle;
import org.junit.Test;

/** Every file that the program wrote for this is valid FHIR R4 to HL7's validator, as HAPI carries it. */
public class OurFilesTest {
    private static final Path FOLDER = Path.of(System.getProperty("drawwell.bundles"));

    @Test
    public void everyFileIsValid() throws IOException {
        List<Path> files;
        try (Stream<Path> all = Files.list(FOLDER)) {
            files = all.filter(it -> it.toString().endsWith(".json")).sorted().toList();
        }
        assertTrue("written by `cargo xtask test --only health-record`", files.size() >= 4);
        for (Path file : files) {
            List<String> wrong = Validator.wrong(Files.readString(file));
            assertEquals(file.getFileName() + ": " + wrong, 0, wrong.size());
        }
    }

    @Test
    public void everyKindOfResourceThatWeWriteIsAmongThem() throws IOException {
        Set<String> kinds = new TreeSet<>();
        for (Bundle.BundleEntryComponent entry : Validator.read(everyKind()).getEntry()) {
            kinds.add(entry.getResource().fhirType());
        }
        assertEquals(Set.of("CodeSystem", "Device", "DocumentReference", "Observation", "Patient"), kinds);
    }

    static String everyKind() throws IOException {
        return Files.readString(FOLDER.resolve("every-kind.json"));
    }
}
