package drawwell.fhir;

import static org.junit.Assert.assertFalse;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.function.Consumer;
import java.util.function.Predicate;
import org.hl7.fhir.r4.model.Bundle;
import org.hl7.fhir.r4.model.CodeableConcept;
import org.hl7.fhir.r4.model.Observation;
import org.hl7.fhir.r4.model.Quantity;
import org.junit.Test;

/** The validator tells our file when one thing in it is wrong; else that it finds nothing would mean nothing. */
public class WrongFilesTest {
    /** Changes the first observation that fits, and expects the validator to mind. */
    private static void mind(String what, Predicate<Observation> of, Consumer<Observation> change) throws IOException {
        Bundle bundle = Validator.read(OurFilesTest.everyKind());
        Observation found = bundle.getEntry().stream()
                .map(Bundle.BundleEntryComponent::getResource)
                .filter(Observation.class::isInstance)
                .map(Observation.class::cast)
                .filter(of)
                .findFirst()
                .orElseThrow();
        change.accept(found);
        assertFalse(what, Validator.wrong(Validator.write(bundle)).isEmpty());
    }

    private static Predicate<Observation> coded(String code) {
        return it -> it.getCode().getCodingFirstRep().getCode().equals(code);
    }

    @Test
    public void aTemperatureInKelvin() throws IOException {
        mind("bodytemp takes Cel and [degF]", coded("8310-5"), it -> it.getValueQuantity().setCode("K"));
    }

    @Test
    public void aWeightOfNobody() throws IOException {
        mind("vital signs have a subject", coded("29463-7"), it -> it.setSubject(null));
    }

    @Test
    public void aWeightOfNoCategory() throws IOException {
        mind("vital signs have their category", coded("29463-7"), it -> it.setCategory(null));
    }

    @Test
    public void aValueAndAReasonWhyThereIsNone() throws IOException {
        mind("obs-6", Observation::hasDataAbsentReason,
                it -> it.setValue(new Quantity().setValue(BigDecimal.ZERO).setUnit("mL")));
    }

    @Test
    public void aUnitThatIsNone() throws IOException {
        mind("UCUM", coded("milk-given"), it -> it.setValue(new Quantity()
                .setValue(BigDecimal.ONE).setSystem("http://unitsofmeasure.org").setCode("cupful")).setDataAbsentReason(null));
    }

    @Test
    public void aCodeThatOurCodeSystemDoesNotHave() throws IOException {
        mind("own code", coded("milk-given"), it -> it.getCode().getCodingFirstRep().setCode("milk-taken"));
    }

    @Test
    public void anObservationWithoutACode() throws IOException {
        mind("1..1", coded("milk-given"), it -> it.setCode(new CodeableConcept()));
    }
}
