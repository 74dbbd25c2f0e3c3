package drawwell.fhir;

import ca.uhn.fhir.context.FhirContext;
import ca.uhn.fhir.context.support.DefaultProfileValidationSupport;
import ca.uhn.fhir.validation.FhirValidator;
import ca.uhn.fhir.validation.ResultSeverityEnum;
import ca.uhn.fhir.validation.SingleValidationMessage;
import java.util.List;
import org.hl7.fhir.common.hapi.validation.support.CommonCodeSystemsTerminologyService;
import org.hl7.fhir.common.hapi.validation.support.InMemoryTerminologyServerValidationSupport;
import org.hl7.fhir.common.hapi.validation.support.PrePopulatedValidationSupport;
import org.hl7.fhir.common.hapi.validation.support.ValidationSupportChain;
import org.hl7.fhir.common.hapi.validation.validator.FhirInstanceValidator;
import org.hl7.fhir.r4.model.Bundle;
import org.hl7.fhir.r4.model.CodeSystem;

/** HAPI's validator of FHIR R4, without a network; it knows the code systems that a file brings. */
final class Validator {
    private static final FhirContext R4 = FhirContext.forR4();

    private Validator() {}

    static Bundle read(String json) {
        return R4.newJsonParser().parseResource(Bundle.class, json);
    }

    static String write(Bundle bundle) {
        return R4.newJsonParser().encodeResourceToString(bundle);
    }

    /** What is wrong with a file, by ERROR and FATAL. */
    static List<String> wrong(String json) {
        PrePopulatedValidationSupport own = new PrePopulatedValidationSupport(R4);
        try {
            for (Bundle.BundleEntryComponent entry : read(json).getEntry()) {
                if (entry.getResource() instanceof CodeSystem) {
                    own.addCodeSystem(entry.getResource());
                }
            }
        } catch (ca.uhn.fhir.parser.DataFormatException unreadable) {
            // The validator says below what is wrong with it.
        }
        ValidationSupportChain chain = new ValidationSupportChain(
                own,
                new DefaultProfileValidationSupport(R4),
                new InMemoryTerminologyServerValidationSupport(R4),
                new CommonCodeSystemsTerminologyService(R4));
        FhirInstanceValidator instance = new FhirInstanceValidator(chain);
        FhirValidator validator = R4.newValidator().registerValidatorModule(instance);
        return validator.validateWithResult(json).getMessages().stream()
                .filter(it -> it.getSeverity().compareTo(ResultSeverityEnum.ERROR) >= 0)
                .map(Validator::line)
                .toList();
    }

    private static String line(SingleValidationMessage message) {
        return message.getSeverity() + " " + message.getLocationString() + ": " + message.getMessage();
    }
}
