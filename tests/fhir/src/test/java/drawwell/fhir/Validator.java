package drawwell.fhir;

import ca.uhn.fhir.context.FhirContext;
import ca.uhn.fhir.context.support.DefaultProfileValidationSupport;
import ca.uhn.fhir.validation.FhirValidator;
import ca.uhn.fhir.validation.ResultSeverityEnum;
import java.io.IOException;
import java.util.List;
import org.hl7.fhir.common.hapi.validation.support.CommonCodeSystemsTerminologyService;
import org.hl7.fhir.common.hapi.validation.support.InMemoryTerminologyServerValidationSupport;
import org.hl7.fhir.common.hapi.validation.support.PrePopulatedValidationSupport;
import org.hl7.fhir.common.hapi.validation.support.ValidationSupportChain;
import org.hl7.fhir.common.hapi.validation.validator.FhirInstanceValidator;
import org.hl7.fhir.r4.model.Bundle;
import org.hl7.fhir.r4.model.CodeSystem;

/** HAPI's validator of FHIR R4, without a network; it knows the code system that our files bring. */
final class Validator {
    private static final FhirContext R4 = FhirContext.forR4();
    private static FhirValidator made;

    private Validator() {}

    static Bundle read(String json) {
        return R4.newJsonParser().parseResource(Bundle.class, json);
    }

    static String write(Bundle bundle) {
        return R4.newJsonParser().encodeResourceToString(bundle);
    }

    /** What is wrong with a file, by ERROR and FATAL. */
    static List<String> wrong(String json) throws IOException {
        return validator().validateWithResult(json).getMessages().stream()
                .filter(it -> it.getSeverity().compareTo(ResultSeverityEnum.ERROR) >= 0)
                .map(it -> it.getSeverity() + " " + it.getLocationString() + ": " + it.getMessage())
                .toList();
    }

    /** One for all: what it learns of the profiles takes it longer than most files. */
    private static synchronized FhirValidator validator() throws IOException {
        if (made == null) {
            PrePopulatedValidationSupport own = new PrePopulatedValidationSupport(R4);
            read(OurFilesTest.everyKind()).getEntry().stream()
                    .map(Bundle.BundleEntryComponent::getResource)
                    .filter(CodeSystem.class::isInstance)
                    .forEach(own::addCodeSystem);
            ValidationSupportChain chain = new ValidationSupportChain(
                    own,
                    new DefaultProfileValidationSupport(R4),
                    new InMemoryTerminologyServerValidationSupport(R4),
                    new CommonCodeSystemsTerminologyService(R4));
            made = R4.newValidator().registerValidatorModule(new FhirInstanceValidator(chain));
        }
        return made;
    }
}
