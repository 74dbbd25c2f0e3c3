package drawwell.pdf;

import static org.junit.Assert.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.BeforeClass;
import org.junit.Test;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.ValidationResult;

/** Every sheet that the program set keeps to PDF/UA-1 (ISO 14289-1), as veraPDF reads it. */
public class AccessibleTest {
    /** Demo and empty, both papers, and the awkward names: see `xtask/src/sheets.rs`. */
    private static final int LEAST_SHEETS = 5;

    private static List<Path> sheets;

    @BeforeClass
    public static void find() throws IOException {
        VeraGreenfieldFoundryProvider.initialise();
        try (Stream<Path> files = Files.list(Path.of(System.getProperty("drawwell.sheets")))) {
            sheets = files.filter(file -> file.toString().endsWith(".pdf")).sorted().collect(Collectors.toList());
        }
    }

    @Test
    public void thereAreSheetsOfEveryKind() {
        assertTrue("only " + sheets, sheets.size() >= LEAST_SHEETS);
    }

    @Test
    public void eachIsCompliant() throws Exception {
        for (Path sheet : sheets) {
            ValidationResult result = read(sheet);
            assertTrue(sheet.getFileName() + ": " + told(result), result.isCompliant());
            assertTrue(sheet.getFileName() + ": too few checks to mean it", result.getTotalAssertions() > 100);
        }
    }

    private static ValidationResult read(Path sheet) throws Exception {
        try (InputStream file = Files.newInputStream(sheet);
                PDFAParser parser = Foundries.defaultInstance().createParser(file, PDFAFlavour.PDFUA_1);
                PDFAValidator validator = Foundries.defaultInstance().createValidator(PDFAFlavour.PDFUA_1, false)) {
            return validator.validate(parser);
        }
    }

    private static String told(ValidationResult result) {
        return result.getTestAssertions().stream()
                .map(one -> one.getRuleId().getClause() + "-" + one.getRuleId().getTestNumber() + " " + one.getMessage())
                .distinct()
                .limit(12)
                .collect(Collectors.joining("\n"));
    }
}
