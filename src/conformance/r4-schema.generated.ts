// @ts-nocheck
// Made by `npm run generated` of the FHIR R4 (4.0.1) JSON schema; do not edit.
export const validateBundle = validate21;

const schema6 = {"$ref":"#/definitions/Bundle","definitions":{"Address":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"use":{"enum":["home","work","temp","old","billing"]},"_use":{"$ref":"#/definitions/Element"},"type":{"enum":["postal","physical","both"]},"_type":{"$ref":"#/definitions/Element"},"text":{"$ref":"#/definitions/string"},"_text":{"$ref":"#/definitions/Element"},"line":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/string"}},"_line":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Element"}},"city":{"$ref":"#/definitions/string"},"_city":{"$ref":"#/definitions/Element"},"district":{"$ref":"#/definitions/string"},"_district":{"$ref":"#/definitions/Element"},"state":{"$ref":"#/definitions/string"},"_state":{"$ref":"#/definitions/Element"},"postalCode":{"$ref":"#/definitions/string"},"_postalCode":{"$ref":"#/definitions/Element"},"country":{"$ref":"#/definitions/string"},"_country":{"$ref":"#/definitions/Element"},"period":{"$ref":"#/definitions/Period"}},"additionalProperties":false},"Age":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"value":{"$ref":"#/definitions/decimal"},"_value":{"$ref":"#/definitions/Element"},"comparator":{"enum":["<","<=",">=",">"]},"_comparator":{"$ref":"#/definitions/Element"},"unit":{"$ref":"#/definitions/string"},"_unit":{"$ref":"#/definitions/Element"},"system":{"$ref":"#/definitions/uri"},"_system":{"$ref":"#/definitions/Element"},"code":{"$ref":"#/definitions/code"},"_code":{"$ref":"#/definitions/Element"}},"additionalProperties":false},"Annotation":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"authorReference":{"$ref":"#/definitions/Reference"},"authorString":{"type":"string","pattern":"^[ \\r\\n\\t\\S]+$"},"_authorString":{"$ref":"#/definitions/Element"},"time":{"$ref":"#/definitions/dateTime"},"_time":{"$ref":"#/definitions/Element"},"text":{"$ref":"#/definitions/markdown"},"_text":{"$ref":"#/definitions/Element"}},"required":["text"],"choices":[{"element":"author[x]","properties":["authorReference","authorString"],"required":false}],"additionalProperties":false},"Appointment":{"type":"object","properties":{"resourceType":{"const":"Appointment"},"id":{"$ref":"#/definitions/id"},"meta":{"$ref":"#/definitions/Meta"},"implicitRules":{"$ref":"#/definitions/uri"},"_implicitRules":{"$ref":"#/definitions/Element"},"language":{"$ref":"#/definitions/code"},"_language":{"$ref":"#/definitions/Element"},"text":{"$ref":"#/definitions/Narrative"},"contained":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/ResourceList"}},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"identifier":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Identifier"}},"status":{"enum":["proposed","pending","booked","arrived","fulfilled","cancelled","noshow","entered-in-error","checked-in","waitlist"]},"_status":{"$ref":"#/definitions/Element"},"cancelationReason":{"$ref":"#/definitions/CodeableConcept"},"serviceCategory":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"serviceType":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"specialty":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"appointmentType":{"$ref":"#/definitions/CodeableConcept"},"reasonCode":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"reasonReference":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"priority":{"$ref":"#/definitions/unsignedInt"},"_priority":{"$ref":"#/definitions/Element"},"description":{"$ref":"#/definitions/string"},"_description":{"$ref":"#/definitions/Element"},"supportingInformation":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"start":{"$ref":"#/definitions/instant"},"_start":{"$ref":"#/definitions/Element"},"end":{"$ref":"#/definitions/instant"},"_end":{"$ref":"#/definitions/Element"},"minutesDuration":{"$ref":"#/definitions/positiveInt"},"_minutesDuration":{"$ref":"#/definitions/Element"},"slot":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"created":{"$ref":"#/definitions/dateTime"},"_created":{"$ref":"#/definitions/Element"},"comment":{"$ref":"#/definitions/string"},"_comment":{"$ref":"#/definitions/Element"},"patientInstruction":{"$ref":"#/definitions/string"},"_patientInstruction":{"$ref":"#/definitions/Element"},"basedOn":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"participant":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Appointment_Participant"}},"requestedPeriod":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Period"}}},"required":["participant","resourceType","status"],"additionalProperties":false},"Appointment_Participant":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"type":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"actor":{"$ref":"#/definitions/Reference"},"required":{"enum":["required","optional","information-only"]},"_required":{"$ref":"#/definitions/Element"},"status":{"enum":["accepted","declined","tentative","needs-action"]},"_status":{"$ref":"#/definitions/Element"},"period":{"$ref":"#/definitions/Period"}},"required":["status"],"additionalProperties":false},"Attachment":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"contentType":{"$ref":"#/definitions/code"},"_contentType":{"$ref":"#/definitions/Element"},"language":{"$ref":"#/definitions/code"},"_language":{"$ref":"#/definitions/Element"},"data":{"$ref":"#/definitions/base64Binary"},"_data":{"$ref":"#/definitions/Element"},"url":{"$ref":"#/definitions/url"},"_url":{"$ref":"#/definitions/Element"},"size":{"$ref":"#/definitions/unsignedInt"},"_size":{"$ref":"#/definitions/Element"},"hash":{"$ref":"#/definitions/base64Binary"},"_hash":{"$ref":"#/definitions/Element"},"title":{"$ref":"#/definitions/string"},"_title":{"$ref":"#/definitions/Element"},"creation":{"$ref":"#/definitions/dateTime"},"_creation":{"$ref":"#/definitions/Element"}},"additionalProperties":false},"Bundle":{"type":"object","properties":{"resourceType":{"const":"Bundle"},"id":{"$ref":"#/definitions/id"},"meta":{"$ref":"#/definitions/Meta"},"implicitRules":{"$ref":"#/definitions/uri"},"_implicitRules":{"$ref":"#/definitions/Element"},"language":{"$ref":"#/definitions/code"},"_language":{"$ref":"#/definitions/Element"},"identifier":{"$ref":"#/definitions/Identifier"},"type":{"enum":["document","message","transaction","transaction-response","batch","batch-response","history","searchset","collection"]},"_type":{"$ref":"#/definitions/Element"},"timestamp":{"$ref":"#/definitions/instant"},"_timestamp":{"$ref":"#/definitions/Element"},"total":{"$ref":"#/definitions/unsignedInt"},"_total":{"$ref":"#/definitions/Element"},"link":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Bundle_Link"}},"entry":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Bundle_Entry"}},"signature":{"$ref":"#/definitions/Signature"}},"required":["resourceType","type"],"additionalProperties":false},"Bundle_Entry":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"link":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Bundle_Link"}},"fullUrl":{"$ref":"#/definitions/uri"},"_fullUrl":{"$ref":"#/definitions/Element"},"resource":{"$ref":"#/definitions/ResourceList"},"search":{"$ref":"#/definitions/Bundle_Search"},"request":{"$ref":"#/definitions/Bundle_Request"},"response":{"$ref":"#/definitions/Bundle_Response"}},"additionalProperties":false},"Bundle_Link":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"relation":{"$ref":"#/definitions/string"},"_relation":{"$ref":"#/definitions/Element"},"url":{"$ref":"#/definitions/uri"},"_url":{"$ref":"#/definitions/Element"}},"required":["relation","url"],"additionalProperties":false},"Bundle_Request":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"method":{"enum":["GET","HEAD","POST","PUT","DELETE","PATCH"]},"_method":{"$ref":"#/definitions/Element"},"url":{"$ref":"#/definitions/uri"},"_url":{"$ref":"#/definitions/Element"},"ifNoneMatch":{"$ref":"#/definitions/string"},"_ifNoneMatch":{"$ref":"#/definitions/Element"},"ifModifiedSince":{"$ref":"#/definitions/instant"},"_ifModifiedSince":{"$ref":"#/definitions/Element"},"ifMatch":{"$ref":"#/definitions/string"},"_ifMatch":{"$ref":"#/definitions/Element"},"ifNoneExist":{"$ref":"#/definitions/string"},"_ifNoneExist":{"$ref":"#/definitions/Element"}},"required":["method","url"],"additionalProperties":false},"Bundle_Response":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"status":{"$ref":"#/definitions/string"},"_status":{"$ref":"#/definitions/Element"},"location":{"$ref":"#/definitions/uri"},"_location":{"$ref":"#/definitions/Element"},"etag":{"$ref":"#/definitions/string"},"_etag":{"$ref":"#/definitions/Element"},"lastModified":{"$ref":"#/definitions/instant"},"_lastModified":{"$ref":"#/definitions/Element"},"outcome":{"$ref":"#/definitions/ResourceList"}},"required":["status"],"additionalProperties":false},"Bundle_Search":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"mode":{"enum":["match","include","outcome"]},"_mode":{"$ref":"#/definitions/Element"},"score":{"$ref":"#/definitions/decimal"},"_score":{"$ref":"#/definitions/Element"}},"additionalProperties":false},"CodeableConcept":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"coding":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Coding"}},"text":{"$ref":"#/definitions/string"},"_text":{"$ref":"#/definitions/Element"}},"additionalProperties":false},"Coding":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"system":{"$ref":"#/definitions/uri"},"_system":{"$ref":"#/definitions/Element"},"version":{"$ref":"#/definitions/string"},"_version":{"$ref":"#/definitions/Element"},"code":{"$ref":"#/definitions/code"},"_code":{"$ref":"#/definitions/Element"},"display":{"$ref":"#/definitions/string"},"_display":{"$ref":"#/definitions/Element"},"userSelected":{"$ref":"#/definitions/boolean"},"_userSelected":{"$ref":"#/definitions/Element"}},"additionalProperties":false},"Condition":{"type":"object","properties":{"resourceType":{"const":"Condition"},"id":{"$ref":"#/definitions/id"},"meta":{"$ref":"#/definitions/Meta"},"implicitRules":{"$ref":"#/definitions/uri"},"_implicitRules":{"$ref":"#/definitions/Element"},"language":{"$ref":"#/definitions/code"},"_language":{"$ref":"#/definitions/Element"},"text":{"$ref":"#/definitions/Narrative"},"contained":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/ResourceList"}},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"identifier":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Identifier"}},"clinicalStatus":{"$ref":"#/definitions/CodeableConcept","type":"object","properties":{"coding":{"type":"array","contains":{"anyOf":[{"type":"object","properties":{"system":{"const":"http://terminology.hl7.org/CodeSystem/condition-clinical"},"code":{"enum":["active","recurrence","relapse","inactive","remission","resolved"]}},"required":["system","code"]}]}}},"required":["coding"]},"verificationStatus":{"$ref":"#/definitions/CodeableConcept","type":"object","properties":{"coding":{"type":"array","contains":{"anyOf":[{"type":"object","properties":{"system":{"const":"http://terminology.hl7.org/CodeSystem/condition-ver-status"},"code":{"enum":["unconfirmed","provisional","differential","confirmed","refuted","entered-in-error"]}},"required":["system","code"]}]}}},"required":["coding"]},"category":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"severity":{"$ref":"#/definitions/CodeableConcept"},"code":{"$ref":"#/definitions/CodeableConcept"},"bodySite":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"subject":{"$ref":"#/definitions/Reference"},"encounter":{"$ref":"#/definitions/Reference"},"onsetDateTime":{"type":"string","pattern":"^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1])(T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00)))?)?)?$"},"_onsetDateTime":{"$ref":"#/definitions/Element"},"onsetAge":{"$ref":"#/definitions/Age"},"onsetPeriod":{"$ref":"#/definitions/Period"},"onsetRange":{"$ref":"#/definitions/Range"},"onsetString":{"type":"string","pattern":"^[ \\r\\n\\t\\S]+$"},"_onsetString":{"$ref":"#/definitions/Element"},"abatementDateTime":{"type":"string","pattern":"^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1])(T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00)))?)?)?$"},"_abatementDateTime":{"$ref":"#/definitions/Element"},"abatementAge":{"$ref":"#/definitions/Age"},"abatementPeriod":{"$ref":"#/definitions/Period"},"abatementRange":{"$ref":"#/definitions/Range"},"abatementString":{"type":"string","pattern":"^[ \\r\\n\\t\\S]+$"},"_abatementString":{"$ref":"#/definitions/Element"},"recordedDate":{"$ref":"#/definitions/dateTime"},"_recordedDate":{"$ref":"#/definitions/Element"},"recorder":{"$ref":"#/definitions/Reference"},"asserter":{"$ref":"#/definitions/Reference"},"stage":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Condition_Stage"}},"evidence":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Condition_Evidence"}},"note":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Annotation"}}},"required":["resourceType","subject"],"choices":[{"element":"onset[x]","properties":["onsetDateTime","onsetAge","onsetPeriod","onsetRange","onsetString"],"required":false},{"element":"abatement[x]","properties":["abatementDateTime","abatementAge","abatementPeriod","abatementRange","abatementString"],"required":false}],"additionalProperties":false},"Condition_Evidence":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"code":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"detail":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}}},"additionalProperties":false},"Condition_Stage":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"summary":{"$ref":"#/definitions/CodeableConcept"},"assessment":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"type":{"$ref":"#/definitions/CodeableConcept"}},"additionalProperties":false},"ContactDetail":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"name":{"$ref":"#/definitions/string"},"_name":{"$ref":"#/definitions/Element"},"telecom":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/ContactPoint"}}},"additionalProperties":false},"ContactPoint":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"system":{"enum":["phone","fax","email","pager","url","sms","other"]},"_system":{"$ref":"#/definitions/Element"},"value":{"$ref":"#/definitions/string"},"_value":{"$ref":"#/definitions/Element"},"use":{"enum":["home","work","temp","old","mobile"]},"_use":{"$ref":"#/definitions/Element"},"rank":{"$ref":"#/definitions/positiveInt"},"_rank":{"$ref":"#/definitions/Element"},"period":{"$ref":"#/definitions/Period"}},"additionalProperties":false},"Contributor":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"type":{"enum":["author","editor","reviewer","endorser"]},"_type":{"$ref":"#/definitions/Element"},"name":{"$ref":"#/definitions/string"},"_name":{"$ref":"#/definitions/Element"},"contact":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/ContactDetail"}}},"required":["name","type"],"additionalProperties":false},"Count":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"value":{"$ref":"#/definitions/decimal"},"_value":{"$ref":"#/definitions/Element"},"comparator":{"enum":["<","<=",">=",">"]},"_comparator":{"$ref":"#/definitions/Element"},"unit":{"$ref":"#/definitions/string"},"_unit":{"$ref":"#/definitions/Element"},"system":{"$ref":"#/definitions/uri"},"_system":{"$ref":"#/definitions/Element"},"code":{"$ref":"#/definitions/code"},"_code":{"$ref":"#/definitions/Element"}},"additionalProperties":false},"DataRequirement":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"type":{"enum":["Address","Age","Annotation","Attachment","BackboneElement","CodeableConcept","Coding","ContactDetail","ContactPoint","Contributor","Count","DataRequirement","Distance","Dosage","Duration","Element","ElementDefinition","Expression","Extension","HumanName","Identifier","MarketingStatus","Meta","Money","MoneyQuantity","Narrative","ParameterDefinition","Period","Population","ProdCharacteristic","ProductShelfLife","Quantity","Range","Ratio","Reference","RelatedArtifact","SampledData","Signature","SimpleQuantity","SubstanceAmount","Timing","TriggerDefinition","UsageContext","base64Binary","boolean","canonical","code","date","dateTime","decimal","id","instant","integer","markdown","oid","positiveInt","string","time","unsignedInt","uri","url","uuid","xhtml","Account","ActivityDefinition","AdverseEvent","AllergyIntolerance","Appointment","AppointmentResponse","AuditEvent","Basic","Binary","BiologicallyDerivedProduct","BodyStructure","Bundle","CapabilityStatement","CarePlan","CareTeam","CatalogEntry","ChargeItem","ChargeItemDefinition","Claim","ClaimResponse","ClinicalImpression","CodeSystem","Communication","CommunicationRequest","CompartmentDefinition","Composition","ConceptMap","Condition","Consent","Contract","Coverage","CoverageEligibilityRequest","CoverageEligibilityResponse","DetectedIssue","Device","DeviceDefinition","DeviceMetric","DeviceRequest","DeviceUseStatement","DiagnosticReport","DocumentManifest","DocumentReference","DomainResource","EffectEvidenceSynthesis","Encounter","Endpoint","EnrollmentRequest","EnrollmentResponse","EpisodeOfCare","EventDefinition","Evidence","EvidenceVariable","ExampleScenario","ExplanationOfBenefit","FamilyMemberHistory","Flag","Goal","GraphDefinition","Group","GuidanceResponse","HealthcareService","ImagingStudy","Immunization","ImmunizationEvaluation","ImmunizationRecommendation","ImplementationGuide","InsurancePlan","Invoice","Library","Linkage","List","Location","Measure","MeasureReport","Media","Medication","MedicationAdministration","MedicationDispense","MedicationKnowledge","MedicationRequest","MedicationStatement","MedicinalProduct","MedicinalProductAuthorization","MedicinalProductContraindication","MedicinalProductIndication","MedicinalProductIngredient","MedicinalProductInteraction","MedicinalProductManufactured","MedicinalProductPackaged","MedicinalProductPharmaceutical","MedicinalProductUndesirableEffect","MessageDefinition","MessageHeader","MolecularSequence","NamingSystem","NutritionOrder","Observation","ObservationDefinition","OperationDefinition","OperationOutcome","Organization","OrganizationAffiliation","Parameters","Patient","PaymentNotice","PaymentReconciliation","Person","PlanDefinition","Practitioner","PractitionerRole","Procedure","Provenance","Questionnaire","QuestionnaireResponse","RelatedPerson","RequestGroup","ResearchDefinition","ResearchElementDefinition","ResearchStudy","ResearchSubject","Resource","RiskAssessment","RiskEvidenceSynthesis","Schedule","SearchParameter","ServiceRequest","Slot","Specimen","SpecimenDefinition","StructureDefinition","StructureMap","Subscription","Substance","SubstanceNucleicAcid","SubstancePolymer","SubstanceProtein","SubstanceReferenceInformation","SubstanceSourceMaterial","SubstanceSpecification","SupplyDelivery","SupplyRequest","Task","TerminologyCapabilities","TestReport","TestScript","ValueSet","VerificationResult","VisionPrescription","Type","Any"]},"_type":{"$ref":"#/definitions/Element"},"profile":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/canonical"}},"subjectCodeableConcept":{"$ref":"#/definitions/CodeableConcept"},"subjectReference":{"$ref":"#/definitions/Reference"},"mustSupport":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/string"}},"_mustSupport":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Element"}},"codeFilter":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/DataRequirement_CodeFilter"}},"dateFilter":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/DataRequirement_DateFilter"}},"limit":{"$ref":"#/definitions/positiveInt"},"_limit":{"$ref":"#/definitions/Element"},"sort":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/DataRequirement_Sort"}}},"required":["type"],"choices":[{"element":"subject[x]","properties":["subjectCodeableConcept","subjectReference"],"required":false}],"additionalProperties":false},"DataRequirement_CodeFilter":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"path":{"$ref":"#/definitions/string"},"_path":{"$ref":"#/definitions/Element"},"searchParam":{"$ref":"#/definitions/string"},"_searchParam":{"$ref":"#/definitions/Element"},"valueSet":{"$ref":"#/definitions/canonical"},"code":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Coding"}}},"additionalProperties":false},"DataRequirement_DateFilter":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"path":{"$ref":"#/definitions/string"},"_path":{"$ref":"#/definitions/Element"},"searchParam":{"$ref":"#/definitions/string"},"_searchParam":{"$ref":"#/definitions/Element"},"valueDateTime":{"type":"string","pattern":"^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1])(T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00)))?)?)?$"},"_valueDateTime":{"$ref":"#/definitions/Element"},"valuePeriod":{"$ref":"#/definitions/Period"},"valueDuration":{"$ref":"#/definitions/Duration"}},"choices":[{"element":"value[x]","properties":["valueDateTime","valuePeriod","valueDuration"],"required":false}],"additionalProperties":false},"DataRequirement_Sort":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"path":{"$ref":"#/definitions/string"},"_path":{"$ref":"#/definitions/Element"},"direction":{"enum":["ascending","descending"]},"_direction":{"$ref":"#/definitions/Element"}},"required":["direction","path"],"additionalProperties":false},"Device":{"type":"object","properties":{"resourceType":{"const":"Device"},"id":{"$ref":"#/definitions/id"},"meta":{"$ref":"#/definitions/Meta"},"implicitRules":{"$ref":"#/definitions/uri"},"_implicitRules":{"$ref":"#/definitions/Element"},"language":{"$ref":"#/definitions/code"},"_language":{"$ref":"#/definitions/Element"},"text":{"$ref":"#/definitions/Narrative"},"contained":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/ResourceList"}},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"identifier":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Identifier"}},"definition":{"$ref":"#/definitions/Reference"},"udiCarrier":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Device_UdiCarrier"}},"status":{"enum":["active","inactive","entered-in-error","unknown"]},"_status":{"$ref":"#/definitions/Element"},"statusReason":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"distinctIdentifier":{"$ref":"#/definitions/string"},"_distinctIdentifier":{"$ref":"#/definitions/Element"},"manufacturer":{"$ref":"#/definitions/string"},"_manufacturer":{"$ref":"#/definitions/Element"},"manufactureDate":{"$ref":"#/definitions/dateTime"},"_manufactureDate":{"$ref":"#/definitions/Element"},"expirationDate":{"$ref":"#/definitions/dateTime"},"_expirationDate":{"$ref":"#/definitions/Element"},"lotNumber":{"$ref":"#/definitions/string"},"_lotNumber":{"$ref":"#/definitions/Element"},"serialNumber":{"$ref":"#/definitions/string"},"_serialNumber":{"$ref":"#/definitions/Element"},"deviceName":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Device_DeviceName"}},"modelNumber":{"$ref":"#/definitions/string"},"_modelNumber":{"$ref":"#/definitions/Element"},"partNumber":{"$ref":"#/definitions/string"},"_partNumber":{"$ref":"#/definitions/Element"},"type":{"$ref":"#/definitions/CodeableConcept"},"specialization":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Device_Specialization"}},"version":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Device_Version"}},"property":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Device_Property"}},"patient":{"$ref":"#/definitions/Reference"},"owner":{"$ref":"#/definitions/Reference"},"contact":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/ContactPoint"}},"location":{"$ref":"#/definitions/Reference"},"url":{"$ref":"#/definitions/uri"},"_url":{"$ref":"#/definitions/Element"},"note":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Annotation"}},"safety":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"parent":{"$ref":"#/definitions/Reference"}},"required":["resourceType"],"additionalProperties":false},"Device_DeviceName":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"name":{"$ref":"#/definitions/string"},"_name":{"$ref":"#/definitions/Element"},"type":{"enum":["udi-label-name","user-friendly-name","patient-reported-name","manufacturer-name","model-name","other"]},"_type":{"$ref":"#/definitions/Element"}},"required":["name","type"],"additionalProperties":false},"Device_Property":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"type":{"$ref":"#/definitions/CodeableConcept"},"valueQuantity":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Quantity"}},"valueCode":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}}},"required":["type"],"additionalProperties":false},"Device_Specialization":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"systemType":{"$ref":"#/definitions/CodeableConcept"},"version":{"$ref":"#/definitions/string"},"_version":{"$ref":"#/definitions/Element"}},"required":["systemType"],"additionalProperties":false},"Device_UdiCarrier":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"deviceIdentifier":{"$ref":"#/definitions/string"},"_deviceIdentifier":{"$ref":"#/definitions/Element"},"issuer":{"$ref":"#/definitions/uri"},"_issuer":{"$ref":"#/definitions/Element"},"jurisdiction":{"$ref":"#/definitions/uri"},"_jurisdiction":{"$ref":"#/definitions/Element"},"carrierAIDC":{"$ref":"#/definitions/base64Binary"},"_carrierAIDC":{"$ref":"#/definitions/Element"},"carrierHRF":{"$ref":"#/definitions/string"},"_carrierHRF":{"$ref":"#/definitions/Element"},"entryType":{"enum":["barcode","rfid","manual","card","self-reported","unknown"]},"_entryType":{"$ref":"#/definitions/Element"}},"additionalProperties":false},"Device_Version":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"type":{"$ref":"#/definitions/CodeableConcept"},"component":{"$ref":"#/definitions/Identifier"},"value":{"$ref":"#/definitions/string"},"_value":{"$ref":"#/definitions/Element"}},"required":["value"],"additionalProperties":false},"DiagnosticReport":{"type":"object","properties":{"resourceType":{"const":"DiagnosticReport"},"id":{"$ref":"#/definitions/id"},"meta":{"$ref":"#/definitions/Meta"},"implicitRules":{"$ref":"#/definitions/uri"},"_implicitRules":{"$ref":"#/definitions/Element"},"language":{"$ref":"#/definitions/code"},"_language":{"$ref":"#/definitions/Element"},"text":{"$ref":"#/definitions/Narrative"},"contained":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/ResourceList"}},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"identifier":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Identifier"}},"basedOn":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"status":{"enum":["registered","partial","preliminary","final","amended","corrected","appended","cancelled","entered-in-error","unknown"]},"_status":{"$ref":"#/definitions/Element"},"category":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"code":{"$ref":"#/definitions/CodeableConcept"},"subject":{"$ref":"#/definitions/Reference"},"encounter":{"$ref":"#/definitions/Reference"},"effectiveDateTime":{"type":"string","pattern":"^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1])(T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00)))?)?)?$"},"_effectiveDateTime":{"$ref":"#/definitions/Element"},"effectivePeriod":{"$ref":"#/definitions/Period"},"issued":{"$ref":"#/definitions/instant"},"_issued":{"$ref":"#/definitions/Element"},"performer":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"resultsInterpreter":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"specimen":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"result":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"imagingStudy":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"media":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/DiagnosticReport_Media"}},"conclusion":{"$ref":"#/definitions/string"},"_conclusion":{"$ref":"#/definitions/Element"},"conclusionCode":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"presentedForm":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Attachment"}}},"required":["code","resourceType","status"],"choices":[{"element":"effective[x]","properties":["effectiveDateTime","effectivePeriod"],"required":false}],"additionalProperties":false},"DiagnosticReport_Media":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"comment":{"$ref":"#/definitions/string"},"_comment":{"$ref":"#/definitions/Element"},"link":{"$ref":"#/definitions/Reference"}},"required":["link"],"additionalProperties":false},"Distance":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"value":{"$ref":"#/definitions/decimal"},"_value":{"$ref":"#/definitions/Element"},"comparator":{"enum":["<","<=",">=",">"]},"_comparator":{"$ref":"#/definitions/Element"},"unit":{"$ref":"#/definitions/string"},"_unit":{"$ref":"#/definitions/Element"},"system":{"$ref":"#/definitions/uri"},"_system":{"$ref":"#/definitions/Element"},"code":{"$ref":"#/definitions/code"},"_code":{"$ref":"#/definitions/Element"}},"additionalProperties":false},"Dosage":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"sequence":{"$ref":"#/definitions/integer"},"_sequence":{"$ref":"#/definitions/Element"},"text":{"$ref":"#/definitions/string"},"_text":{"$ref":"#/definitions/Element"},"additionalInstruction":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"patientInstruction":{"$ref":"#/definitions/string"},"_patientInstruction":{"$ref":"#/definitions/Element"},"timing":{"$ref":"#/definitions/Timing"},"asNeededBoolean":{"type":"boolean"},"_asNeededBoolean":{"$ref":"#/definitions/Element"},"asNeededCodeableConcept":{"$ref":"#/definitions/CodeableConcept"},"site":{"$ref":"#/definitions/CodeableConcept"},"route":{"$ref":"#/definitions/CodeableConcept"},"method":{"$ref":"#/definitions/CodeableConcept"},"doseAndRate":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Dosage_DoseAndRate"}},"maxDosePerPeriod":{"$ref":"#/definitions/Ratio"},"maxDosePerAdministration":{"$ref":"#/definitions/Quantity"},"maxDosePerLifetime":{"$ref":"#/definitions/Quantity"}},"choices":[{"element":"asNeeded[x]","properties":["asNeededBoolean","asNeededCodeableConcept"],"required":false}],"additionalProperties":false},"Dosage_DoseAndRate":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"type":{"$ref":"#/definitions/CodeableConcept"},"doseRange":{"$ref":"#/definitions/Range"},"doseQuantity":{"$ref":"#/definitions/Quantity"},"rateRatio":{"$ref":"#/definitions/Ratio"},"rateRange":{"$ref":"#/definitions/Range"},"rateQuantity":{"$ref":"#/definitions/Quantity"}},"choices":[{"element":"dose[x]","properties":["doseRange","doseQuantity"],"required":false},{"element":"rate[x]","properties":["rateRatio","rateRange","rateQuantity"],"required":false}],"additionalProperties":false},"Duration":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"value":{"$ref":"#/definitions/decimal"},"_value":{"$ref":"#/definitions/Element"},"comparator":{"enum":["<","<=",">=",">"]},"_comparator":{"$ref":"#/definitions/Element"},"unit":{"$ref":"#/definitions/string"},"_unit":{"$ref":"#/definitions/Element"},"system":{"$ref":"#/definitions/uri"},"_system":{"$ref":"#/definitions/Element"},"code":{"$ref":"#/definitions/code"},"_code":{"$ref":"#/definitions/Element"}},"additionalProperties":false},"Element":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}}},"additionalProperties":false},"Expression":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"description":{"$ref":"#/definitions/string"},"_description":{"$ref":"#/definitions/Element"},"name":{"$ref":"#/definitions/id"},"_name":{"$ref":"#/definitions/Element"},"language":{"type":"string","enum":["text/cql","text/fhirpath","application/x-fhir-query"]},"_language":{"$ref":"#/definitions/Element"},"expression":{"$ref":"#/definitions/string"},"_expression":{"$ref":"#/definitions/Element"},"reference":{"$ref":"#/definitions/uri"},"_reference":{"$ref":"#/definitions/Element"}},"required":["language"],"additionalProperties":false},"Extension":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"url":{"$ref":"#/definitions/uri"},"_url":{"$ref":"#/definitions/Element"},"valueBase64Binary":{"type":"string","pattern":"^(\\s*([0-9a-zA-Z\\+/=]){4}\\s*)+$"},"_valueBase64Binary":{"$ref":"#/definitions/Element"},"valueBoolean":{"type":"boolean"},"_valueBoolean":{"$ref":"#/definitions/Element"},"valueCanonical":{"type":"string","pattern":"^\\S*$"},"_valueCanonical":{"$ref":"#/definitions/Element"},"valueCode":{"type":"string","pattern":"^[^\\s]+(\\s[^\\s]+)*$"},"_valueCode":{"$ref":"#/definitions/Element"},"valueDate":{"type":"string","pattern":"^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1]))?)?$"},"_valueDate":{"$ref":"#/definitions/Element"},"valueDateTime":{"type":"string","pattern":"^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1])(T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00)))?)?)?$"},"_valueDateTime":{"$ref":"#/definitions/Element"},"valueDecimal":{"type":"number"},"_valueDecimal":{"$ref":"#/definitions/Element"},"valueId":{"type":"string","pattern":"^[A-Za-z0-9\\-\\.]{1,64}$"},"_valueId":{"$ref":"#/definitions/Element"},"valueInstant":{"type":"string","pattern":"^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)-(0[1-9]|1[0-2])-(0[1-9]|[1-2][0-9]|3[0-1])T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00))$"},"_valueInstant":{"$ref":"#/definitions/Element"},"valueInteger":{"type":"number"},"_valueInteger":{"$ref":"#/definitions/Element"},"valueMarkdown":{"type":"string","pattern":"^[ \\r\\n\\t\\S]+$"},"_valueMarkdown":{"$ref":"#/definitions/Element"},"valueOid":{"type":"string","pattern":"^urn:oid:[0-2](\\.(0|[1-9][0-9]*))+$"},"_valueOid":{"$ref":"#/definitions/Element"},"valuePositiveInt":{"type":"number"},"_valuePositiveInt":{"$ref":"#/definitions/Element"},"valueString":{"type":"string","pattern":"^[ \\r\\n\\t\\S]+$"},"_valueString":{"$ref":"#/definitions/Element"},"valueTime":{"type":"string","pattern":"^([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?$"},"_valueTime":{"$ref":"#/definitions/Element"},"valueUnsignedInt":{"type":"number"},"_valueUnsignedInt":{"$ref":"#/definitions/Element"},"valueUri":{"type":"string","pattern":"^\\S*$"},"_valueUri":{"$ref":"#/definitions/Element"},"valueUrl":{"type":"string","pattern":"^\\S*$"},"_valueUrl":{"$ref":"#/definitions/Element"},"valueUuid":{"type":"string","pattern":"^urn:uuid:[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$"},"_valueUuid":{"$ref":"#/definitions/Element"},"valueAddress":{"$ref":"#/definitions/Address"},"valueAge":{"$ref":"#/definitions/Age"},"valueAnnotation":{"$ref":"#/definitions/Annotation"},"valueAttachment":{"$ref":"#/definitions/Attachment"},"valueCodeableConcept":{"$ref":"#/definitions/CodeableConcept"},"valueCoding":{"$ref":"#/definitions/Coding"},"valueContactPoint":{"$ref":"#/definitions/ContactPoint"},"valueCount":{"$ref":"#/definitions/Count"},"valueDistance":{"$ref":"#/definitions/Distance"},"valueDuration":{"$ref":"#/definitions/Duration"},"valueHumanName":{"$ref":"#/definitions/HumanName"},"valueIdentifier":{"$ref":"#/definitions/Identifier"},"valueMoney":{"$ref":"#/definitions/Money"},"valuePeriod":{"$ref":"#/definitions/Period"},"valueQuantity":{"$ref":"#/definitions/Quantity"},"valueRange":{"$ref":"#/definitions/Range"},"valueRatio":{"$ref":"#/definitions/Ratio"},"valueReference":{"$ref":"#/definitions/Reference"},"valueSampledData":{"$ref":"#/definitions/SampledData"},"valueSignature":{"$ref":"#/definitions/Signature"},"valueTiming":{"$ref":"#/definitions/Timing"},"valueContactDetail":{"$ref":"#/definitions/ContactDetail"},"valueContributor":{"$ref":"#/definitions/Contributor"},"valueDataRequirement":{"$ref":"#/definitions/DataRequirement"},"valueExpression":{"$ref":"#/definitions/Expression"},"valueParameterDefinition":{"$ref":"#/definitions/ParameterDefinition"},"valueRelatedArtifact":{"$ref":"#/definitions/RelatedArtifact"},"valueTriggerDefinition":{"$ref":"#/definitions/TriggerDefinition"},"valueUsageContext":{"$ref":"#/definitions/UsageContext"},"valueDosage":{"$ref":"#/definitions/Dosage"}},"required":["url"],"choices":[{"element":"value[x]","properties":["valueBase64Binary","valueBoolean","valueCanonical","valueCode","valueDate","valueDateTime","valueDecimal","valueId","valueInstant","valueInteger","valueMarkdown","valueOid","valuePositiveInt","valueString","valueTime","valueUnsignedInt","valueUri","valueUrl","valueUuid","valueAddress","valueAge","valueAnnotation","valueAttachment","valueCodeableConcept","valueCoding","valueContactPoint","valueCount","valueDistance","valueDuration","valueHumanName","valueIdentifier","valueMoney","valuePeriod","valueQuantity","valueRange","valueRatio","valueReference","valueSampledData","valueSignature","valueTiming","valueContactDetail","valueContributor","valueDataRequirement","valueExpression","valueParameterDefinition","valueRelatedArtifact","valueTriggerDefinition","valueUsageContext","valueDosage"],"required":false}],"additionalProperties":false},"HumanName":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"use":{"enum":["usual","official","temp","nickname","anonymous","old","maiden"]},"_use":{"$ref":"#/definitions/Element"},"text":{"$ref":"#/definitions/string"},"_text":{"$ref":"#/definitions/Element"},"family":{"$ref":"#/definitions/string"},"_family":{"$ref":"#/definitions/Element"},"given":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/string"}},"_given":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Element"}},"prefix":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/string"}},"_prefix":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Element"}},"suffix":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/string"}},"_suffix":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Element"}},"period":{"$ref":"#/definitions/Period"}},"additionalProperties":false},"Identifier":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"use":{"enum":["usual","official","temp","secondary","old"]},"_use":{"$ref":"#/definitions/Element"},"type":{"$ref":"#/definitions/CodeableConcept"},"system":{"$ref":"#/definitions/uri"},"_system":{"$ref":"#/definitions/Element"},"value":{"$ref":"#/definitions/string"},"_value":{"$ref":"#/definitions/Element"},"period":{"$ref":"#/definitions/Period"},"assigner":{"$ref":"#/definitions/Reference"}},"additionalProperties":false},"Media":{"type":"object","properties":{"resourceType":{"const":"Media"},"id":{"$ref":"#/definitions/id"},"meta":{"$ref":"#/definitions/Meta"},"implicitRules":{"$ref":"#/definitions/uri"},"_implicitRules":{"$ref":"#/definitions/Element"},"language":{"$ref":"#/definitions/code"},"_language":{"$ref":"#/definitions/Element"},"text":{"$ref":"#/definitions/Narrative"},"contained":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/ResourceList"}},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"identifier":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Identifier"}},"basedOn":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"partOf":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"status":{"enum":["preparation","in-progress","not-done","on-hold","stopped","completed","entered-in-error","unknown"]},"_status":{"$ref":"#/definitions/Element"},"type":{"$ref":"#/definitions/CodeableConcept"},"modality":{"$ref":"#/definitions/CodeableConcept"},"view":{"$ref":"#/definitions/CodeableConcept"},"subject":{"$ref":"#/definitions/Reference"},"encounter":{"$ref":"#/definitions/Reference"},"createdDateTime":{"type":"string","pattern":"^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1])(T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00)))?)?)?$"},"_createdDateTime":{"$ref":"#/definitions/Element"},"createdPeriod":{"$ref":"#/definitions/Period"},"issued":{"$ref":"#/definitions/instant"},"_issued":{"$ref":"#/definitions/Element"},"operator":{"$ref":"#/definitions/Reference"},"reasonCode":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"bodySite":{"$ref":"#/definitions/CodeableConcept"},"deviceName":{"$ref":"#/definitions/string"},"_deviceName":{"$ref":"#/definitions/Element"},"device":{"$ref":"#/definitions/Reference"},"height":{"$ref":"#/definitions/positiveInt"},"_height":{"$ref":"#/definitions/Element"},"width":{"$ref":"#/definitions/positiveInt"},"_width":{"$ref":"#/definitions/Element"},"frames":{"$ref":"#/definitions/positiveInt"},"_frames":{"$ref":"#/definitions/Element"},"duration":{"$ref":"#/definitions/decimal"},"_duration":{"$ref":"#/definitions/Element"},"content":{"$ref":"#/definitions/Attachment"},"note":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Annotation"}}},"required":["content","resourceType","status"],"choices":[{"element":"created[x]","properties":["createdDateTime","createdPeriod"],"required":false}],"additionalProperties":false},"MedicationAdministration":{"type":"object","properties":{"resourceType":{"const":"MedicationAdministration"},"id":{"$ref":"#/definitions/id"},"meta":{"$ref":"#/definitions/Meta"},"implicitRules":{"$ref":"#/definitions/uri"},"_implicitRules":{"$ref":"#/definitions/Element"},"language":{"$ref":"#/definitions/code"},"_language":{"$ref":"#/definitions/Element"},"text":{"$ref":"#/definitions/Narrative"},"contained":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/ResourceList"}},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"identifier":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Identifier"}},"instantiates":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/uri"}},"_instantiates":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Element"}},"partOf":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"status":{"enum":["in-progress","not-done","on-hold","completed","entered-in-error","stopped","unknown"]},"_status":{"$ref":"#/definitions/Element"},"statusReason":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"category":{"$ref":"#/definitions/CodeableConcept"},"medicationCodeableConcept":{"$ref":"#/definitions/CodeableConcept"},"medicationReference":{"$ref":"#/definitions/Reference"},"subject":{"$ref":"#/definitions/Reference"},"context":{"$ref":"#/definitions/Reference"},"supportingInformation":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"effectiveDateTime":{"type":"string","pattern":"^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1])(T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00)))?)?)?$"},"_effectiveDateTime":{"$ref":"#/definitions/Element"},"effectivePeriod":{"$ref":"#/definitions/Period"},"performer":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/MedicationAdministration_Performer"}},"reasonCode":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"reasonReference":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"request":{"$ref":"#/definitions/Reference"},"device":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"note":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Annotation"}},"dosage":{"$ref":"#/definitions/MedicationAdministration_Dosage"},"eventHistory":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}}},"required":["resourceType","status","subject"],"choices":[{"element":"medication[x]","properties":["medicationCodeableConcept","medicationReference"],"required":true},{"element":"effective[x]","properties":["effectiveDateTime","effectivePeriod"],"required":true}],"additionalProperties":false},"MedicationAdministration_Dosage":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"text":{"$ref":"#/definitions/string"},"_text":{"$ref":"#/definitions/Element"},"site":{"$ref":"#/definitions/CodeableConcept"},"route":{"$ref":"#/definitions/CodeableConcept"},"method":{"$ref":"#/definitions/CodeableConcept"},"dose":{"$ref":"#/definitions/Quantity"},"rateRatio":{"$ref":"#/definitions/Ratio"},"rateQuantity":{"$ref":"#/definitions/Quantity"}},"choices":[{"element":"rate[x]","properties":["rateRatio","rateQuantity"],"required":false}],"additionalProperties":false},"MedicationAdministration_Performer":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"function":{"$ref":"#/definitions/CodeableConcept"},"actor":{"$ref":"#/definitions/Reference"}},"required":["actor"],"additionalProperties":false},"MedicationStatement":{"type":"object","properties":{"resourceType":{"const":"MedicationStatement"},"id":{"$ref":"#/definitions/id"},"meta":{"$ref":"#/definitions/Meta"},"implicitRules":{"$ref":"#/definitions/uri"},"_implicitRules":{"$ref":"#/definitions/Element"},"language":{"$ref":"#/definitions/code"},"_language":{"$ref":"#/definitions/Element"},"text":{"$ref":"#/definitions/Narrative"},"contained":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/ResourceList"}},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"identifier":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Identifier"}},"basedOn":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"partOf":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"status":{"enum":["active","completed","entered-in-error","intended","stopped","on-hold","unknown","not-taken"]},"_status":{"$ref":"#/definitions/Element"},"statusReason":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"category":{"$ref":"#/definitions/CodeableConcept"},"medicationCodeableConcept":{"$ref":"#/definitions/CodeableConcept"},"medicationReference":{"$ref":"#/definitions/Reference"},"subject":{"$ref":"#/definitions/Reference"},"context":{"$ref":"#/definitions/Reference"},"effectiveDateTime":{"type":"string","pattern":"^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1])(T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00)))?)?)?$"},"_effectiveDateTime":{"$ref":"#/definitions/Element"},"effectivePeriod":{"$ref":"#/definitions/Period"},"dateAsserted":{"$ref":"#/definitions/dateTime"},"_dateAsserted":{"$ref":"#/definitions/Element"},"informationSource":{"$ref":"#/definitions/Reference"},"derivedFrom":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"reasonCode":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"reasonReference":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"note":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Annotation"}},"dosage":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Dosage"}}},"required":["resourceType","status","subject"],"choices":[{"element":"medication[x]","properties":["medicationCodeableConcept","medicationReference"],"required":true},{"element":"effective[x]","properties":["effectiveDateTime","effectivePeriod"],"required":false}],"additionalProperties":false},"Meta":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"versionId":{"$ref":"#/definitions/id"},"_versionId":{"$ref":"#/definitions/Element"},"lastUpdated":{"$ref":"#/definitions/instant"},"_lastUpdated":{"$ref":"#/definitions/Element"},"source":{"$ref":"#/definitions/uri"},"_source":{"$ref":"#/definitions/Element"},"profile":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/canonical"}},"security":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Coding"}},"tag":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Coding"}}},"additionalProperties":false},"Money":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"value":{"$ref":"#/definitions/decimal"},"_value":{"$ref":"#/definitions/Element"},"currency":{"$ref":"#/definitions/code"},"_currency":{"$ref":"#/definitions/Element"}},"additionalProperties":false},"Narrative":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"status":{"enum":["generated","extensions","additional","empty"]},"_status":{"$ref":"#/definitions/Element"},"div":{"$ref":"#/definitions/xhtml"}},"required":["div","status"],"additionalProperties":false},"Observation":{"type":"object","properties":{"resourceType":{"const":"Observation"},"id":{"$ref":"#/definitions/id"},"meta":{"$ref":"#/definitions/Meta"},"implicitRules":{"$ref":"#/definitions/uri"},"_implicitRules":{"$ref":"#/definitions/Element"},"language":{"$ref":"#/definitions/code"},"_language":{"$ref":"#/definitions/Element"},"text":{"$ref":"#/definitions/Narrative"},"contained":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/ResourceList"}},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"identifier":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Identifier"}},"basedOn":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"partOf":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"status":{"enum":["registered","preliminary","final","amended","corrected","cancelled","entered-in-error","unknown"]},"_status":{"$ref":"#/definitions/Element"},"category":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"code":{"$ref":"#/definitions/CodeableConcept"},"subject":{"$ref":"#/definitions/Reference"},"focus":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"encounter":{"$ref":"#/definitions/Reference"},"effectiveDateTime":{"type":"string","pattern":"^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1])(T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00)))?)?)?$"},"_effectiveDateTime":{"$ref":"#/definitions/Element"},"effectivePeriod":{"$ref":"#/definitions/Period"},"effectiveTiming":{"$ref":"#/definitions/Timing"},"effectiveInstant":{"type":"string","pattern":"^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)-(0[1-9]|1[0-2])-(0[1-9]|[1-2][0-9]|3[0-1])T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00))$"},"_effectiveInstant":{"$ref":"#/definitions/Element"},"issued":{"$ref":"#/definitions/instant"},"_issued":{"$ref":"#/definitions/Element"},"performer":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"valueQuantity":{"$ref":"#/definitions/Quantity"},"valueCodeableConcept":{"$ref":"#/definitions/CodeableConcept"},"valueString":{"type":"string","pattern":"^[ \\r\\n\\t\\S]+$"},"_valueString":{"$ref":"#/definitions/Element"},"valueBoolean":{"type":"boolean"},"_valueBoolean":{"$ref":"#/definitions/Element"},"valueInteger":{"type":"number"},"_valueInteger":{"$ref":"#/definitions/Element"},"valueRange":{"$ref":"#/definitions/Range"},"valueRatio":{"$ref":"#/definitions/Ratio"},"valueSampledData":{"$ref":"#/definitions/SampledData"},"valueTime":{"type":"string","pattern":"^([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?$"},"_valueTime":{"$ref":"#/definitions/Element"},"valueDateTime":{"type":"string","pattern":"^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1])(T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00)))?)?)?$"},"_valueDateTime":{"$ref":"#/definitions/Element"},"valuePeriod":{"$ref":"#/definitions/Period"},"dataAbsentReason":{"$ref":"#/definitions/CodeableConcept"},"interpretation":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"note":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Annotation"}},"bodySite":{"$ref":"#/definitions/CodeableConcept"},"method":{"$ref":"#/definitions/CodeableConcept"},"specimen":{"$ref":"#/definitions/Reference"},"device":{"$ref":"#/definitions/Reference"},"referenceRange":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Observation_ReferenceRange"}},"hasMember":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"derivedFrom":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"component":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Observation_Component"}}},"required":["code","resourceType","status"],"choices":[{"element":"effective[x]","properties":["effectiveDateTime","effectivePeriod","effectiveTiming","effectiveInstant"],"required":false},{"element":"value[x]","properties":["valueQuantity","valueCodeableConcept","valueString","valueBoolean","valueInteger","valueRange","valueRatio","valueSampledData","valueTime","valueDateTime","valuePeriod"],"required":false}],"additionalProperties":false},"Observation_Component":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"code":{"$ref":"#/definitions/CodeableConcept"},"valueQuantity":{"$ref":"#/definitions/Quantity"},"valueCodeableConcept":{"$ref":"#/definitions/CodeableConcept"},"valueString":{"type":"string","pattern":"^[ \\r\\n\\t\\S]+$"},"_valueString":{"$ref":"#/definitions/Element"},"valueBoolean":{"type":"boolean"},"_valueBoolean":{"$ref":"#/definitions/Element"},"valueInteger":{"type":"number"},"_valueInteger":{"$ref":"#/definitions/Element"},"valueRange":{"$ref":"#/definitions/Range"},"valueRatio":{"$ref":"#/definitions/Ratio"},"valueSampledData":{"$ref":"#/definitions/SampledData"},"valueTime":{"type":"string","pattern":"^([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?$"},"_valueTime":{"$ref":"#/definitions/Element"},"valueDateTime":{"type":"string","pattern":"^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1])(T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00)))?)?)?$"},"_valueDateTime":{"$ref":"#/definitions/Element"},"valuePeriod":{"$ref":"#/definitions/Period"},"dataAbsentReason":{"$ref":"#/definitions/CodeableConcept"},"interpretation":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"referenceRange":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Observation_ReferenceRange"}}},"required":["code"],"choices":[{"element":"value[x]","properties":["valueQuantity","valueCodeableConcept","valueString","valueBoolean","valueInteger","valueRange","valueRatio","valueSampledData","valueTime","valueDateTime","valuePeriod"],"required":false}],"additionalProperties":false},"Observation_ReferenceRange":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"low":{"$ref":"#/definitions/Quantity"},"high":{"$ref":"#/definitions/Quantity"},"type":{"$ref":"#/definitions/CodeableConcept"},"appliesTo":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"age":{"$ref":"#/definitions/Range"},"text":{"$ref":"#/definitions/string"},"_text":{"$ref":"#/definitions/Element"}},"additionalProperties":false},"ParameterDefinition":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"name":{"$ref":"#/definitions/code"},"_name":{"$ref":"#/definitions/Element"},"use":{"enum":["in","out"]},"_use":{"$ref":"#/definitions/Element"},"min":{"$ref":"#/definitions/integer"},"_min":{"$ref":"#/definitions/Element"},"max":{"$ref":"#/definitions/string"},"_max":{"$ref":"#/definitions/Element"},"documentation":{"$ref":"#/definitions/string"},"_documentation":{"$ref":"#/definitions/Element"},"type":{"enum":["Address","Age","Annotation","Attachment","BackboneElement","CodeableConcept","Coding","ContactDetail","ContactPoint","Contributor","Count","DataRequirement","Distance","Dosage","Duration","Element","ElementDefinition","Expression","Extension","HumanName","Identifier","MarketingStatus","Meta","Money","MoneyQuantity","Narrative","ParameterDefinition","Period","Population","ProdCharacteristic","ProductShelfLife","Quantity","Range","Ratio","Reference","RelatedArtifact","SampledData","Signature","SimpleQuantity","SubstanceAmount","Timing","TriggerDefinition","UsageContext","base64Binary","boolean","canonical","code","date","dateTime","decimal","id","instant","integer","markdown","oid","positiveInt","string","time","unsignedInt","uri","url","uuid","xhtml","Account","ActivityDefinition","AdverseEvent","AllergyIntolerance","Appointment","AppointmentResponse","AuditEvent","Basic","Binary","BiologicallyDerivedProduct","BodyStructure","Bundle","CapabilityStatement","CarePlan","CareTeam","CatalogEntry","ChargeItem","ChargeItemDefinition","Claim","ClaimResponse","ClinicalImpression","CodeSystem","Communication","CommunicationRequest","CompartmentDefinition","Composition","ConceptMap","Condition","Consent","Contract","Coverage","CoverageEligibilityRequest","CoverageEligibilityResponse","DetectedIssue","Device","DeviceDefinition","DeviceMetric","DeviceRequest","DeviceUseStatement","DiagnosticReport","DocumentManifest","DocumentReference","DomainResource","EffectEvidenceSynthesis","Encounter","Endpoint","EnrollmentRequest","EnrollmentResponse","EpisodeOfCare","EventDefinition","Evidence","EvidenceVariable","ExampleScenario","ExplanationOfBenefit","FamilyMemberHistory","Flag","Goal","GraphDefinition","Group","GuidanceResponse","HealthcareService","ImagingStudy","Immunization","ImmunizationEvaluation","ImmunizationRecommendation","ImplementationGuide","InsurancePlan","Invoice","Library","Linkage","List","Location","Measure","MeasureReport","Media","Medication","MedicationAdministration","MedicationDispense","MedicationKnowledge","MedicationRequest","MedicationStatement","MedicinalProduct","MedicinalProductAuthorization","MedicinalProductContraindication","MedicinalProductIndication","MedicinalProductIngredient","MedicinalProductInteraction","MedicinalProductManufactured","MedicinalProductPackaged","MedicinalProductPharmaceutical","MedicinalProductUndesirableEffect","MessageDefinition","MessageHeader","MolecularSequence","NamingSystem","NutritionOrder","Observation","ObservationDefinition","OperationDefinition","OperationOutcome","Organization","OrganizationAffiliation","Parameters","Patient","PaymentNotice","PaymentReconciliation","Person","PlanDefinition","Practitioner","PractitionerRole","Procedure","Provenance","Questionnaire","QuestionnaireResponse","RelatedPerson","RequestGroup","ResearchDefinition","ResearchElementDefinition","ResearchStudy","ResearchSubject","Resource","RiskAssessment","RiskEvidenceSynthesis","Schedule","SearchParameter","ServiceRequest","Slot","Specimen","SpecimenDefinition","StructureDefinition","StructureMap","Subscription","Substance","SubstanceNucleicAcid","SubstancePolymer","SubstanceProtein","SubstanceReferenceInformation","SubstanceSourceMaterial","SubstanceSpecification","SupplyDelivery","SupplyRequest","Task","TerminologyCapabilities","TestReport","TestScript","ValueSet","VerificationResult","VisionPrescription","Type","Any"]},"_type":{"$ref":"#/definitions/Element"},"profile":{"$ref":"#/definitions/canonical"}},"required":["type","use"],"additionalProperties":false},"Period":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"start":{"$ref":"#/definitions/dateTime"},"_start":{"$ref":"#/definitions/Element"},"end":{"$ref":"#/definitions/dateTime"},"_end":{"$ref":"#/definitions/Element"}},"additionalProperties":false},"Procedure":{"type":"object","properties":{"resourceType":{"const":"Procedure"},"id":{"$ref":"#/definitions/id"},"meta":{"$ref":"#/definitions/Meta"},"implicitRules":{"$ref":"#/definitions/uri"},"_implicitRules":{"$ref":"#/definitions/Element"},"language":{"$ref":"#/definitions/code"},"_language":{"$ref":"#/definitions/Element"},"text":{"$ref":"#/definitions/Narrative"},"contained":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/ResourceList"}},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"identifier":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Identifier"}},"instantiatesCanonical":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/canonical"}},"instantiatesUri":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/uri"}},"_instantiatesUri":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Element"}},"basedOn":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"partOf":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"status":{"enum":["preparation","in-progress","not-done","on-hold","stopped","completed","entered-in-error","unknown"]},"_status":{"$ref":"#/definitions/Element"},"statusReason":{"$ref":"#/definitions/CodeableConcept"},"category":{"$ref":"#/definitions/CodeableConcept"},"code":{"$ref":"#/definitions/CodeableConcept"},"subject":{"$ref":"#/definitions/Reference"},"encounter":{"$ref":"#/definitions/Reference"},"performedDateTime":{"type":"string","pattern":"^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1])(T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00)))?)?)?$"},"_performedDateTime":{"$ref":"#/definitions/Element"},"performedPeriod":{"$ref":"#/definitions/Period"},"performedString":{"type":"string","pattern":"^[ \\r\\n\\t\\S]+$"},"_performedString":{"$ref":"#/definitions/Element"},"performedAge":{"$ref":"#/definitions/Age"},"performedRange":{"$ref":"#/definitions/Range"},"recorder":{"$ref":"#/definitions/Reference"},"asserter":{"$ref":"#/definitions/Reference"},"performer":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Procedure_Performer"}},"location":{"$ref":"#/definitions/Reference"},"reasonCode":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"reasonReference":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"bodySite":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"outcome":{"$ref":"#/definitions/CodeableConcept"},"report":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"complication":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"complicationDetail":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"followUp":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"note":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Annotation"}},"focalDevice":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Procedure_FocalDevice"}},"usedReference":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"usedCode":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}}},"required":["resourceType","status","subject"],"choices":[{"element":"performed[x]","properties":["performedDateTime","performedPeriod","performedString","performedAge","performedRange"],"required":false}],"additionalProperties":false},"Procedure_FocalDevice":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"action":{"$ref":"#/definitions/CodeableConcept"},"manipulated":{"$ref":"#/definitions/Reference"}},"required":["manipulated"],"additionalProperties":false},"Procedure_Performer":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"function":{"$ref":"#/definitions/CodeableConcept"},"actor":{"$ref":"#/definitions/Reference"},"onBehalfOf":{"$ref":"#/definitions/Reference"}},"required":["actor"],"additionalProperties":false},"Provenance":{"type":"object","properties":{"resourceType":{"const":"Provenance"},"id":{"$ref":"#/definitions/id"},"meta":{"$ref":"#/definitions/Meta"},"implicitRules":{"$ref":"#/definitions/uri"},"_implicitRules":{"$ref":"#/definitions/Element"},"language":{"$ref":"#/definitions/code"},"_language":{"$ref":"#/definitions/Element"},"text":{"$ref":"#/definitions/Narrative"},"contained":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/ResourceList"}},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"target":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"occurredPeriod":{"$ref":"#/definitions/Period"},"occurredDateTime":{"type":"string","pattern":"^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1])(T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00)))?)?)?$"},"_occurredDateTime":{"$ref":"#/definitions/Element"},"recorded":{"$ref":"#/definitions/instant"},"_recorded":{"$ref":"#/definitions/Element"},"policy":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/uri"}},"_policy":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Element"}},"location":{"$ref":"#/definitions/Reference"},"reason":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"activity":{"$ref":"#/definitions/CodeableConcept"},"agent":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Provenance_Agent"}},"entity":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Provenance_Entity"}},"signature":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Signature"}}},"required":["agent","recorded","resourceType","target"],"choices":[{"element":"occurred[x]","properties":["occurredPeriod","occurredDateTime"],"required":false}],"additionalProperties":false},"Provenance_Agent":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"type":{"$ref":"#/definitions/CodeableConcept"},"role":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"who":{"$ref":"#/definitions/Reference"},"onBehalfOf":{"$ref":"#/definitions/Reference"}},"required":["who"],"additionalProperties":false},"Provenance_Entity":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"role":{"enum":["derivation","revision","quotation","source","removal"]},"_role":{"$ref":"#/definitions/Element"},"what":{"$ref":"#/definitions/Reference"},"agent":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Provenance_Agent"}}},"required":["role","what"],"additionalProperties":false},"Quantity":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"value":{"$ref":"#/definitions/decimal"},"_value":{"$ref":"#/definitions/Element"},"comparator":{"enum":["<","<=",">=",">"]},"_comparator":{"$ref":"#/definitions/Element"},"unit":{"$ref":"#/definitions/string"},"_unit":{"$ref":"#/definitions/Element"},"system":{"$ref":"#/definitions/uri"},"_system":{"$ref":"#/definitions/Element"},"code":{"$ref":"#/definitions/code"},"_code":{"$ref":"#/definitions/Element"}},"additionalProperties":false},"Range":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"low":{"$ref":"#/definitions/Quantity"},"high":{"$ref":"#/definitions/Quantity"}},"additionalProperties":false},"Ratio":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"numerator":{"$ref":"#/definitions/Quantity"},"denominator":{"$ref":"#/definitions/Quantity"}},"additionalProperties":false},"Reference":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"reference":{"$ref":"#/definitions/string"},"_reference":{"$ref":"#/definitions/Element"},"type":{"$ref":"#/definitions/uri"},"_type":{"$ref":"#/definitions/Element"},"identifier":{"$ref":"#/definitions/Identifier"},"display":{"$ref":"#/definitions/string"},"_display":{"$ref":"#/definitions/Element"}},"additionalProperties":false},"RelatedArtifact":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"type":{"enum":["documentation","justification","citation","predecessor","successor","derived-from","depends-on","composed-of"]},"_type":{"$ref":"#/definitions/Element"},"label":{"$ref":"#/definitions/string"},"_label":{"$ref":"#/definitions/Element"},"display":{"$ref":"#/definitions/string"},"_display":{"$ref":"#/definitions/Element"},"citation":{"$ref":"#/definitions/markdown"},"_citation":{"$ref":"#/definitions/Element"},"url":{"$ref":"#/definitions/url"},"_url":{"$ref":"#/definitions/Element"},"document":{"$ref":"#/definitions/Attachment"},"resource":{"$ref":"#/definitions/canonical"}},"required":["type"],"additionalProperties":false},"ResourceList":{"type":"object","discriminator":{"propertyName":"resourceType"},"required":["resourceType"],"oneOf":[{"$ref":"#/definitions/Procedure"},{"$ref":"#/definitions/Condition"},{"$ref":"#/definitions/Observation"},{"$ref":"#/definitions/Specimen"},{"$ref":"#/definitions/ServiceRequest"},{"$ref":"#/definitions/DiagnosticReport"},{"$ref":"#/definitions/Device"},{"$ref":"#/definitions/MedicationAdministration"},{"$ref":"#/definitions/MedicationStatement"},{"$ref":"#/definitions/Media"},{"$ref":"#/definitions/Provenance"},{"$ref":"#/definitions/Appointment"},{"$ref":"#/definitions/Task"}]},"SampledData":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"origin":{"$ref":"#/definitions/Quantity"},"period":{"$ref":"#/definitions/decimal"},"_period":{"$ref":"#/definitions/Element"},"factor":{"$ref":"#/definitions/decimal"},"_factor":{"$ref":"#/definitions/Element"},"lowerLimit":{"$ref":"#/definitions/decimal"},"_lowerLimit":{"$ref":"#/definitions/Element"},"upperLimit":{"$ref":"#/definitions/decimal"},"_upperLimit":{"$ref":"#/definitions/Element"},"dimensions":{"$ref":"#/definitions/positiveInt"},"_dimensions":{"$ref":"#/definitions/Element"},"data":{"$ref":"#/definitions/string"},"_data":{"$ref":"#/definitions/Element"}},"required":["dimensions","origin","period"],"additionalProperties":false},"ServiceRequest":{"type":"object","properties":{"resourceType":{"const":"ServiceRequest"},"id":{"$ref":"#/definitions/id"},"meta":{"$ref":"#/definitions/Meta"},"implicitRules":{"$ref":"#/definitions/uri"},"_implicitRules":{"$ref":"#/definitions/Element"},"language":{"$ref":"#/definitions/code"},"_language":{"$ref":"#/definitions/Element"},"text":{"$ref":"#/definitions/Narrative"},"contained":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/ResourceList"}},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"identifier":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Identifier"}},"instantiatesCanonical":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/canonical"}},"instantiatesUri":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/uri"}},"_instantiatesUri":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Element"}},"basedOn":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"replaces":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"requisition":{"$ref":"#/definitions/Identifier"},"status":{"enum":["draft","active","on-hold","revoked","completed","entered-in-error","unknown"]},"_status":{"$ref":"#/definitions/Element"},"intent":{"enum":["proposal","plan","directive","order","original-order","reflex-order","filler-order","instance-order","option"]},"_intent":{"$ref":"#/definitions/Element"},"category":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"priority":{"enum":["routine","urgent","asap","stat"]},"_priority":{"$ref":"#/definitions/Element"},"doNotPerform":{"$ref":"#/definitions/boolean"},"_doNotPerform":{"$ref":"#/definitions/Element"},"code":{"$ref":"#/definitions/CodeableConcept"},"orderDetail":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"quantityQuantity":{"$ref":"#/definitions/Quantity"},"quantityRatio":{"$ref":"#/definitions/Ratio"},"quantityRange":{"$ref":"#/definitions/Range"},"subject":{"$ref":"#/definitions/Reference"},"encounter":{"$ref":"#/definitions/Reference"},"occurrenceDateTime":{"type":"string","pattern":"^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1])(T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00)))?)?)?$"},"_occurrenceDateTime":{"$ref":"#/definitions/Element"},"occurrencePeriod":{"$ref":"#/definitions/Period"},"occurrenceTiming":{"$ref":"#/definitions/Timing"},"asNeededBoolean":{"type":"boolean"},"_asNeededBoolean":{"$ref":"#/definitions/Element"},"asNeededCodeableConcept":{"$ref":"#/definitions/CodeableConcept"},"authoredOn":{"$ref":"#/definitions/dateTime"},"_authoredOn":{"$ref":"#/definitions/Element"},"requester":{"$ref":"#/definitions/Reference"},"performerType":{"$ref":"#/definitions/CodeableConcept"},"performer":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"locationCode":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"locationReference":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"reasonCode":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"reasonReference":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"insurance":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"supportingInfo":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"specimen":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"bodySite":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"note":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Annotation"}},"patientInstruction":{"$ref":"#/definitions/string"},"_patientInstruction":{"$ref":"#/definitions/Element"},"relevantHistory":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}}},"required":["intent","resourceType","status","subject"],"choices":[{"element":"quantity[x]","properties":["quantityQuantity","quantityRatio","quantityRange"],"required":false},{"element":"occurrence[x]","properties":["occurrenceDateTime","occurrencePeriod","occurrenceTiming"],"required":false},{"element":"asNeeded[x]","properties":["asNeededBoolean","asNeededCodeableConcept"],"required":false}],"additionalProperties":false},"Signature":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"type":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Coding"}},"when":{"$ref":"#/definitions/instant"},"_when":{"$ref":"#/definitions/Element"},"who":{"$ref":"#/definitions/Reference"},"onBehalfOf":{"$ref":"#/definitions/Reference"},"targetFormat":{"$ref":"#/definitions/code"},"_targetFormat":{"$ref":"#/definitions/Element"},"sigFormat":{"$ref":"#/definitions/code"},"_sigFormat":{"$ref":"#/definitions/Element"},"data":{"$ref":"#/definitions/base64Binary"},"_data":{"$ref":"#/definitions/Element"}},"required":["type","when","who"],"additionalProperties":false},"Specimen":{"type":"object","properties":{"resourceType":{"const":"Specimen"},"id":{"$ref":"#/definitions/id"},"meta":{"$ref":"#/definitions/Meta"},"implicitRules":{"$ref":"#/definitions/uri"},"_implicitRules":{"$ref":"#/definitions/Element"},"language":{"$ref":"#/definitions/code"},"_language":{"$ref":"#/definitions/Element"},"text":{"$ref":"#/definitions/Narrative"},"contained":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/ResourceList"}},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"identifier":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Identifier"}},"accessionIdentifier":{"$ref":"#/definitions/Identifier"},"status":{"enum":["available","unavailable","unsatisfactory","entered-in-error"]},"_status":{"$ref":"#/definitions/Element"},"type":{"$ref":"#/definitions/CodeableConcept"},"subject":{"$ref":"#/definitions/Reference"},"receivedTime":{"$ref":"#/definitions/dateTime"},"_receivedTime":{"$ref":"#/definitions/Element"},"parent":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"request":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"collection":{"$ref":"#/definitions/Specimen_Collection"},"processing":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Specimen_Processing"}},"container":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Specimen_Container"}},"condition":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"note":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Annotation"}}},"required":["resourceType"],"additionalProperties":false},"Specimen_Collection":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"collector":{"$ref":"#/definitions/Reference"},"collectedDateTime":{"type":"string","pattern":"^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1])(T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00)))?)?)?$"},"_collectedDateTime":{"$ref":"#/definitions/Element"},"collectedPeriod":{"$ref":"#/definitions/Period"},"duration":{"$ref":"#/definitions/Duration"},"quantity":{"$ref":"#/definitions/Quantity"},"method":{"$ref":"#/definitions/CodeableConcept"},"bodySite":{"$ref":"#/definitions/CodeableConcept"},"fastingStatusCodeableConcept":{"$ref":"#/definitions/CodeableConcept"},"fastingStatusDuration":{"$ref":"#/definitions/Duration"}},"choices":[{"element":"collected[x]","properties":["collectedDateTime","collectedPeriod"],"required":false},{"element":"fastingStatus[x]","properties":["fastingStatusCodeableConcept","fastingStatusDuration"],"required":false}],"additionalProperties":false},"Specimen_Container":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"identifier":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Identifier"}},"description":{"$ref":"#/definitions/string"},"_description":{"$ref":"#/definitions/Element"},"type":{"$ref":"#/definitions/CodeableConcept"},"capacity":{"$ref":"#/definitions/Quantity"},"specimenQuantity":{"$ref":"#/definitions/Quantity"},"additiveCodeableConcept":{"$ref":"#/definitions/CodeableConcept"},"additiveReference":{"$ref":"#/definitions/Reference"}},"choices":[{"element":"additive[x]","properties":["additiveCodeableConcept","additiveReference"],"required":false}],"additionalProperties":false},"Specimen_Processing":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"description":{"$ref":"#/definitions/string"},"_description":{"$ref":"#/definitions/Element"},"procedure":{"$ref":"#/definitions/CodeableConcept"},"additive":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"timeDateTime":{"type":"string","pattern":"^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1])(T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00)))?)?)?$"},"_timeDateTime":{"$ref":"#/definitions/Element"},"timePeriod":{"$ref":"#/definitions/Period"}},"choices":[{"element":"time[x]","properties":["timeDateTime","timePeriod"],"required":false}],"additionalProperties":false},"Task":{"type":"object","properties":{"resourceType":{"const":"Task"},"id":{"$ref":"#/definitions/id"},"meta":{"$ref":"#/definitions/Meta"},"implicitRules":{"$ref":"#/definitions/uri"},"_implicitRules":{"$ref":"#/definitions/Element"},"language":{"$ref":"#/definitions/code"},"_language":{"$ref":"#/definitions/Element"},"text":{"$ref":"#/definitions/Narrative"},"contained":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/ResourceList"}},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"identifier":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Identifier"}},"instantiatesCanonical":{"$ref":"#/definitions/canonical"},"instantiatesUri":{"$ref":"#/definitions/uri"},"_instantiatesUri":{"$ref":"#/definitions/Element"},"basedOn":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"groupIdentifier":{"$ref":"#/definitions/Identifier"},"partOf":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"status":{"enum":["draft","requested","received","accepted","rejected","ready","cancelled","in-progress","on-hold","failed","completed","entered-in-error"]},"_status":{"$ref":"#/definitions/Element"},"statusReason":{"$ref":"#/definitions/CodeableConcept"},"businessStatus":{"$ref":"#/definitions/CodeableConcept"},"intent":{"enum":["unknown","proposal","plan","order","original-order","reflex-order","filler-order","instance-order","option"]},"_intent":{"$ref":"#/definitions/Element"},"priority":{"enum":["routine","urgent","asap","stat"]},"_priority":{"$ref":"#/definitions/Element"},"code":{"$ref":"#/definitions/CodeableConcept"},"description":{"$ref":"#/definitions/string"},"_description":{"$ref":"#/definitions/Element"},"focus":{"$ref":"#/definitions/Reference"},"for":{"$ref":"#/definitions/Reference"},"encounter":{"$ref":"#/definitions/Reference"},"executionPeriod":{"$ref":"#/definitions/Period"},"authoredOn":{"$ref":"#/definitions/dateTime"},"_authoredOn":{"$ref":"#/definitions/Element"},"lastModified":{"$ref":"#/definitions/dateTime"},"_lastModified":{"$ref":"#/definitions/Element"},"requester":{"$ref":"#/definitions/Reference"},"performerType":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"owner":{"$ref":"#/definitions/Reference"},"location":{"$ref":"#/definitions/Reference"},"reasonCode":{"$ref":"#/definitions/CodeableConcept"},"reasonReference":{"$ref":"#/definitions/Reference"},"insurance":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"note":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Annotation"}},"relevantHistory":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"restriction":{"$ref":"#/definitions/Task_Restriction"},"input":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Task_Input"}},"output":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Task_Output"}}},"required":["intent","resourceType","status"],"additionalProperties":false},"Task_Input":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"type":{"$ref":"#/definitions/CodeableConcept"},"valueBase64Binary":{"type":"string","pattern":"^(\\s*([0-9a-zA-Z\\+/=]){4}\\s*)+$"},"_valueBase64Binary":{"$ref":"#/definitions/Element"},"valueBoolean":{"type":"boolean"},"_valueBoolean":{"$ref":"#/definitions/Element"},"valueCanonical":{"type":"string","pattern":"^\\S*$"},"_valueCanonical":{"$ref":"#/definitions/Element"},"valueCode":{"type":"string","pattern":"^[^\\s]+(\\s[^\\s]+)*$"},"_valueCode":{"$ref":"#/definitions/Element"},"valueDate":{"type":"string","pattern":"^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1]))?)?$"},"_valueDate":{"$ref":"#/definitions/Element"},"valueDateTime":{"type":"string","pattern":"^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1])(T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00)))?)?)?$"},"_valueDateTime":{"$ref":"#/definitions/Element"},"valueDecimal":{"type":"number"},"_valueDecimal":{"$ref":"#/definitions/Element"},"valueId":{"type":"string","pattern":"^[A-Za-z0-9\\-\\.]{1,64}$"},"_valueId":{"$ref":"#/definitions/Element"},"valueInstant":{"type":"string","pattern":"^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)-(0[1-9]|1[0-2])-(0[1-9]|[1-2][0-9]|3[0-1])T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00))$"},"_valueInstant":{"$ref":"#/definitions/Element"},"valueInteger":{"type":"number"},"_valueInteger":{"$ref":"#/definitions/Element"},"valueMarkdown":{"type":"string","pattern":"^[ \\r\\n\\t\\S]+$"},"_valueMarkdown":{"$ref":"#/definitions/Element"},"valueOid":{"type":"string","pattern":"^urn:oid:[0-2](\\.(0|[1-9][0-9]*))+$"},"_valueOid":{"$ref":"#/definitions/Element"},"valuePositiveInt":{"type":"number"},"_valuePositiveInt":{"$ref":"#/definitions/Element"},"valueString":{"type":"string","pattern":"^[ \\r\\n\\t\\S]+$"},"_valueString":{"$ref":"#/definitions/Element"},"valueTime":{"type":"string","pattern":"^([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?$"},"_valueTime":{"$ref":"#/definitions/Element"},"valueUnsignedInt":{"type":"number"},"_valueUnsignedInt":{"$ref":"#/definitions/Element"},"valueUri":{"type":"string","pattern":"^\\S*$"},"_valueUri":{"$ref":"#/definitions/Element"},"valueUrl":{"type":"string","pattern":"^\\S*$"},"_valueUrl":{"$ref":"#/definitions/Element"},"valueUuid":{"type":"string","pattern":"^urn:uuid:[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$"},"_valueUuid":{"$ref":"#/definitions/Element"},"valueAddress":{"$ref":"#/definitions/Address"},"valueAge":{"$ref":"#/definitions/Age"},"valueAnnotation":{"$ref":"#/definitions/Annotation"},"valueAttachment":{"$ref":"#/definitions/Attachment"},"valueCodeableConcept":{"$ref":"#/definitions/CodeableConcept"},"valueCoding":{"$ref":"#/definitions/Coding"},"valueContactPoint":{"$ref":"#/definitions/ContactPoint"},"valueCount":{"$ref":"#/definitions/Count"},"valueDistance":{"$ref":"#/definitions/Distance"},"valueDuration":{"$ref":"#/definitions/Duration"},"valueHumanName":{"$ref":"#/definitions/HumanName"},"valueIdentifier":{"$ref":"#/definitions/Identifier"},"valueMoney":{"$ref":"#/definitions/Money"},"valuePeriod":{"$ref":"#/definitions/Period"},"valueQuantity":{"$ref":"#/definitions/Quantity"},"valueRange":{"$ref":"#/definitions/Range"},"valueRatio":{"$ref":"#/definitions/Ratio"},"valueReference":{"$ref":"#/definitions/Reference"},"valueSampledData":{"$ref":"#/definitions/SampledData"},"valueSignature":{"$ref":"#/definitions/Signature"},"valueTiming":{"$ref":"#/definitions/Timing"},"valueContactDetail":{"$ref":"#/definitions/ContactDetail"},"valueContributor":{"$ref":"#/definitions/Contributor"},"valueDataRequirement":{"$ref":"#/definitions/DataRequirement"},"valueExpression":{"$ref":"#/definitions/Expression"},"valueParameterDefinition":{"$ref":"#/definitions/ParameterDefinition"},"valueRelatedArtifact":{"$ref":"#/definitions/RelatedArtifact"},"valueTriggerDefinition":{"$ref":"#/definitions/TriggerDefinition"},"valueUsageContext":{"$ref":"#/definitions/UsageContext"},"valueDosage":{"$ref":"#/definitions/Dosage"}},"required":["type"],"choices":[{"element":"value[x]","properties":["valueBase64Binary","valueBoolean","valueCanonical","valueCode","valueDate","valueDateTime","valueDecimal","valueId","valueInstant","valueInteger","valueMarkdown","valueOid","valuePositiveInt","valueString","valueTime","valueUnsignedInt","valueUri","valueUrl","valueUuid","valueAddress","valueAge","valueAnnotation","valueAttachment","valueCodeableConcept","valueCoding","valueContactPoint","valueCount","valueDistance","valueDuration","valueHumanName","valueIdentifier","valueMoney","valuePeriod","valueQuantity","valueRange","valueRatio","valueReference","valueSampledData","valueSignature","valueTiming","valueContactDetail","valueContributor","valueDataRequirement","valueExpression","valueParameterDefinition","valueRelatedArtifact","valueTriggerDefinition","valueUsageContext","valueDosage"],"required":true}],"additionalProperties":false},"Task_Output":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"type":{"$ref":"#/definitions/CodeableConcept"},"valueBase64Binary":{"type":"string","pattern":"^(\\s*([0-9a-zA-Z\\+/=]){4}\\s*)+$"},"_valueBase64Binary":{"$ref":"#/definitions/Element"},"valueBoolean":{"type":"boolean"},"_valueBoolean":{"$ref":"#/definitions/Element"},"valueCanonical":{"type":"string","pattern":"^\\S*$"},"_valueCanonical":{"$ref":"#/definitions/Element"},"valueCode":{"type":"string","pattern":"^[^\\s]+(\\s[^\\s]+)*$"},"_valueCode":{"$ref":"#/definitions/Element"},"valueDate":{"type":"string","pattern":"^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1]))?)?$"},"_valueDate":{"$ref":"#/definitions/Element"},"valueDateTime":{"type":"string","pattern":"^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1])(T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00)))?)?)?$"},"_valueDateTime":{"$ref":"#/definitions/Element"},"valueDecimal":{"type":"number"},"_valueDecimal":{"$ref":"#/definitions/Element"},"valueId":{"type":"string","pattern":"^[A-Za-z0-9\\-\\.]{1,64}$"},"_valueId":{"$ref":"#/definitions/Element"},"valueInstant":{"type":"string","pattern":"^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)-(0[1-9]|1[0-2])-(0[1-9]|[1-2][0-9]|3[0-1])T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00))$"},"_valueInstant":{"$ref":"#/definitions/Element"},"valueInteger":{"type":"number"},"_valueInteger":{"$ref":"#/definitions/Element"},"valueMarkdown":{"type":"string","pattern":"^[ \\r\\n\\t\\S]+$"},"_valueMarkdown":{"$ref":"#/definitions/Element"},"valueOid":{"type":"string","pattern":"^urn:oid:[0-2](\\.(0|[1-9][0-9]*))+$"},"_valueOid":{"$ref":"#/definitions/Element"},"valuePositiveInt":{"type":"number"},"_valuePositiveInt":{"$ref":"#/definitions/Element"},"valueString":{"type":"string","pattern":"^[ \\r\\n\\t\\S]+$"},"_valueString":{"$ref":"#/definitions/Element"},"valueTime":{"type":"string","pattern":"^([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?$"},"_valueTime":{"$ref":"#/definitions/Element"},"valueUnsignedInt":{"type":"number"},"_valueUnsignedInt":{"$ref":"#/definitions/Element"},"valueUri":{"type":"string","pattern":"^\\S*$"},"_valueUri":{"$ref":"#/definitions/Element"},"valueUrl":{"type":"string","pattern":"^\\S*$"},"_valueUrl":{"$ref":"#/definitions/Element"},"valueUuid":{"type":"string","pattern":"^urn:uuid:[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$"},"_valueUuid":{"$ref":"#/definitions/Element"},"valueAddress":{"$ref":"#/definitions/Address"},"valueAge":{"$ref":"#/definitions/Age"},"valueAnnotation":{"$ref":"#/definitions/Annotation"},"valueAttachment":{"$ref":"#/definitions/Attachment"},"valueCodeableConcept":{"$ref":"#/definitions/CodeableConcept"},"valueCoding":{"$ref":"#/definitions/Coding"},"valueContactPoint":{"$ref":"#/definitions/ContactPoint"},"valueCount":{"$ref":"#/definitions/Count"},"valueDistance":{"$ref":"#/definitions/Distance"},"valueDuration":{"$ref":"#/definitions/Duration"},"valueHumanName":{"$ref":"#/definitions/HumanName"},"valueIdentifier":{"$ref":"#/definitions/Identifier"},"valueMoney":{"$ref":"#/definitions/Money"},"valuePeriod":{"$ref":"#/definitions/Period"},"valueQuantity":{"$ref":"#/definitions/Quantity"},"valueRange":{"$ref":"#/definitions/Range"},"valueRatio":{"$ref":"#/definitions/Ratio"},"valueReference":{"$ref":"#/definitions/Reference"},"valueSampledData":{"$ref":"#/definitions/SampledData"},"valueSignature":{"$ref":"#/definitions/Signature"},"valueTiming":{"$ref":"#/definitions/Timing"},"valueContactDetail":{"$ref":"#/definitions/ContactDetail"},"valueContributor":{"$ref":"#/definitions/Contributor"},"valueDataRequirement":{"$ref":"#/definitions/DataRequirement"},"valueExpression":{"$ref":"#/definitions/Expression"},"valueParameterDefinition":{"$ref":"#/definitions/ParameterDefinition"},"valueRelatedArtifact":{"$ref":"#/definitions/RelatedArtifact"},"valueTriggerDefinition":{"$ref":"#/definitions/TriggerDefinition"},"valueUsageContext":{"$ref":"#/definitions/UsageContext"},"valueDosage":{"$ref":"#/definitions/Dosage"}},"required":["type"],"choices":[{"element":"value[x]","properties":["valueBase64Binary","valueBoolean","valueCanonical","valueCode","valueDate","valueDateTime","valueDecimal","valueId","valueInstant","valueInteger","valueMarkdown","valueOid","valuePositiveInt","valueString","valueTime","valueUnsignedInt","valueUri","valueUrl","valueUuid","valueAddress","valueAge","valueAnnotation","valueAttachment","valueCodeableConcept","valueCoding","valueContactPoint","valueCount","valueDistance","valueDuration","valueHumanName","valueIdentifier","valueMoney","valuePeriod","valueQuantity","valueRange","valueRatio","valueReference","valueSampledData","valueSignature","valueTiming","valueContactDetail","valueContributor","valueDataRequirement","valueExpression","valueParameterDefinition","valueRelatedArtifact","valueTriggerDefinition","valueUsageContext","valueDosage"],"required":true}],"additionalProperties":false},"Task_Restriction":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"repetitions":{"$ref":"#/definitions/positiveInt"},"_repetitions":{"$ref":"#/definitions/Element"},"period":{"$ref":"#/definitions/Period"},"recipient":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}}},"additionalProperties":false},"Timing":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"event":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/dateTime"}},"_event":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Element"}},"repeat":{"$ref":"#/definitions/Timing_Repeat"},"code":{"$ref":"#/definitions/CodeableConcept"}},"additionalProperties":false},"Timing_Repeat":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"boundsDuration":{"$ref":"#/definitions/Duration"},"boundsRange":{"$ref":"#/definitions/Range"},"boundsPeriod":{"$ref":"#/definitions/Period"},"count":{"$ref":"#/definitions/positiveInt"},"_count":{"$ref":"#/definitions/Element"},"countMax":{"$ref":"#/definitions/positiveInt"},"_countMax":{"$ref":"#/definitions/Element"},"duration":{"$ref":"#/definitions/decimal"},"_duration":{"$ref":"#/definitions/Element"},"durationMax":{"$ref":"#/definitions/decimal"},"_durationMax":{"$ref":"#/definitions/Element"},"durationUnit":{"enum":["s","min","h","d","wk","mo","a"]},"_durationUnit":{"$ref":"#/definitions/Element"},"frequency":{"$ref":"#/definitions/positiveInt"},"_frequency":{"$ref":"#/definitions/Element"},"frequencyMax":{"$ref":"#/definitions/positiveInt"},"_frequencyMax":{"$ref":"#/definitions/Element"},"period":{"$ref":"#/definitions/decimal"},"_period":{"$ref":"#/definitions/Element"},"periodMax":{"$ref":"#/definitions/decimal"},"_periodMax":{"$ref":"#/definitions/Element"},"periodUnit":{"enum":["s","min","h","d","wk","mo","a"]},"_periodUnit":{"$ref":"#/definitions/Element"},"dayOfWeek":{"type":"array","minItems":1,"items":{"enum":["mon","tue","wed","thu","fri","sat","sun"]}},"_dayOfWeek":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Element"}},"timeOfDay":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/time"}},"_timeOfDay":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Element"}},"when":{"type":"array","minItems":1,"items":{"enum":["MORN","MORN.early","MORN.late","NOON","AFT","AFT.early","AFT.late","EVE","EVE.early","EVE.late","NIGHT","PHS","HS","WAKE","C","CM","CD","CV","AC","ACM","ACD","ACV","PC","PCM","PCD","PCV"]}},"_when":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Element"}},"offset":{"$ref":"#/definitions/unsignedInt"},"_offset":{"$ref":"#/definitions/Element"}},"choices":[{"element":"bounds[x]","properties":["boundsDuration","boundsRange","boundsPeriod"],"required":false}],"additionalProperties":false},"TriggerDefinition":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"type":{"enum":["named-event","periodic","data-changed","data-added","data-modified","data-removed","data-accessed","data-access-ended"]},"_type":{"$ref":"#/definitions/Element"},"name":{"$ref":"#/definitions/string"},"_name":{"$ref":"#/definitions/Element"},"timingTiming":{"$ref":"#/definitions/Timing"},"timingReference":{"$ref":"#/definitions/Reference"},"timingDate":{"type":"string","pattern":"^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1]))?)?$"},"_timingDate":{"$ref":"#/definitions/Element"},"timingDateTime":{"type":"string","pattern":"^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1])(T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00)))?)?)?$"},"_timingDateTime":{"$ref":"#/definitions/Element"},"data":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/DataRequirement"}},"condition":{"$ref":"#/definitions/Expression"}},"required":["type"],"choices":[{"element":"timing[x]","properties":["timingTiming","timingReference","timingDate","timingDateTime"],"required":false}],"additionalProperties":false},"UsageContext":{"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"code":{"$ref":"#/definitions/Coding"},"valueCodeableConcept":{"$ref":"#/definitions/CodeableConcept"},"valueQuantity":{"$ref":"#/definitions/Quantity"},"valueRange":{"$ref":"#/definitions/Range"},"valueReference":{"$ref":"#/definitions/Reference"}},"required":["code"],"choices":[{"element":"value[x]","properties":["valueCodeableConcept","valueQuantity","valueRange","valueReference"],"required":true}],"additionalProperties":false},"base64Binary":{"type":"string"},"boolean":{"type":"boolean"},"canonical":{"type":"string","pattern":"^\\S*$"},"code":{"type":"string","pattern":"^[^\\s]+(\\s[^\\s]+)*$"},"dateTime":{"type":"string","pattern":"^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1])(T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00)))?)?)?$"},"decimal":{"type":"number"},"id":{"type":"string","pattern":"^[A-Za-z0-9\\-\\.]{1,64}$"},"instant":{"type":"string","pattern":"^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)-(0[1-9]|1[0-2])-(0[1-9]|[1-2][0-9]|3[0-1])T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00))$"},"integer":{"type":"integer"},"markdown":{"type":"string","pattern":"^[ \\r\\n\\t\\S]+$"},"positiveInt":{"type":"integer","minimum":1},"string":{"type":"string","pattern":"^[ \\r\\n\\t\\S]+$"},"time":{"type":"string","pattern":"^([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?$"},"unsignedInt":{"type":"integer","minimum":0},"uri":{"type":"string","pattern":"^\\S*$"},"url":{"type":"string","pattern":"^\\S*$"},"xhtml":{"type":"string"}}};
const schema7 = {"type":"object","properties":{"resourceType":{"const":"Bundle"},"id":{"$ref":"#/definitions/id"},"meta":{"$ref":"#/definitions/Meta"},"implicitRules":{"$ref":"#/definitions/uri"},"_implicitRules":{"$ref":"#/definitions/Element"},"language":{"$ref":"#/definitions/code"},"_language":{"$ref":"#/definitions/Element"},"identifier":{"$ref":"#/definitions/Identifier"},"type":{"enum":["document","message","transaction","transaction-response","batch","batch-response","history","searchset","collection"]},"_type":{"$ref":"#/definitions/Element"},"timestamp":{"$ref":"#/definitions/instant"},"_timestamp":{"$ref":"#/definitions/Element"},"total":{"$ref":"#/definitions/unsignedInt"},"_total":{"$ref":"#/definitions/Element"},"link":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Bundle_Link"}},"entry":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Bundle_Entry"}},"signature":{"$ref":"#/definitions/Signature"}},"required":["resourceType","type"],"additionalProperties":false};
const func2 = Object.prototype.hasOwnProperty;
const schema8 = {"type":"string","pattern":"^[A-Za-z0-9\\-\\.]{1,64}$"};
const pattern0 = new RegExp("^[A-Za-z0-9\\-\\.]{1,64}$", "u");

function validate23(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(typeof data === "string"){
if(!pattern0.test(data)){
const err0 = {instancePath,schemaPath:"#/pattern",keyword:"pattern",params:{pattern: "^[A-Za-z0-9\\-\\.]{1,64}$"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
else {
const err1 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
validate23.errors = vErrors;
return errors === 0;
}

const schema9 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"versionId":{"$ref":"#/definitions/id"},"_versionId":{"$ref":"#/definitions/Element"},"lastUpdated":{"$ref":"#/definitions/instant"},"_lastUpdated":{"$ref":"#/definitions/Element"},"source":{"$ref":"#/definitions/uri"},"_source":{"$ref":"#/definitions/Element"},"profile":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/canonical"}},"security":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Coding"}},"tag":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Coding"}}},"additionalProperties":false};
const schema10 = {"type":"string","pattern":"^[ \\r\\n\\t\\S]+$"};
const pattern1 = new RegExp("^[ \\r\\n\\t\\S]+$", "u");

function validate26(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(typeof data === "string"){
if(!pattern1.test(data)){
const err0 = {instancePath,schemaPath:"#/pattern",keyword:"pattern",params:{pattern: "^[ \\r\\n\\t\\S]+$"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
else {
const err1 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
validate26.errors = vErrors;
return errors === 0;
}

const schema11 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"url":{"$ref":"#/definitions/uri"},"_url":{"$ref":"#/definitions/Element"},"valueBase64Binary":{"type":"string","pattern":"^(\\s*([0-9a-zA-Z\\+/=]){4}\\s*)+$"},"_valueBase64Binary":{"$ref":"#/definitions/Element"},"valueBoolean":{"type":"boolean"},"_valueBoolean":{"$ref":"#/definitions/Element"},"valueCanonical":{"type":"string","pattern":"^\\S*$"},"_valueCanonical":{"$ref":"#/definitions/Element"},"valueCode":{"type":"string","pattern":"^[^\\s]+(\\s[^\\s]+)*$"},"_valueCode":{"$ref":"#/definitions/Element"},"valueDate":{"type":"string","pattern":"^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1]))?)?$"},"_valueDate":{"$ref":"#/definitions/Element"},"valueDateTime":{"type":"string","pattern":"^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1])(T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00)))?)?)?$"},"_valueDateTime":{"$ref":"#/definitions/Element"},"valueDecimal":{"type":"number"},"_valueDecimal":{"$ref":"#/definitions/Element"},"valueId":{"type":"string","pattern":"^[A-Za-z0-9\\-\\.]{1,64}$"},"_valueId":{"$ref":"#/definitions/Element"},"valueInstant":{"type":"string","pattern":"^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)-(0[1-9]|1[0-2])-(0[1-9]|[1-2][0-9]|3[0-1])T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00))$"},"_valueInstant":{"$ref":"#/definitions/Element"},"valueInteger":{"type":"number"},"_valueInteger":{"$ref":"#/definitions/Element"},"valueMarkdown":{"type":"string","pattern":"^[ \\r\\n\\t\\S]+$"},"_valueMarkdown":{"$ref":"#/definitions/Element"},"valueOid":{"type":"string","pattern":"^urn:oid:[0-2](\\.(0|[1-9][0-9]*))+$"},"_valueOid":{"$ref":"#/definitions/Element"},"valuePositiveInt":{"type":"number"},"_valuePositiveInt":{"$ref":"#/definitions/Element"},"valueString":{"type":"string","pattern":"^[ \\r\\n\\t\\S]+$"},"_valueString":{"$ref":"#/definitions/Element"},"valueTime":{"type":"string","pattern":"^([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?$"},"_valueTime":{"$ref":"#/definitions/Element"},"valueUnsignedInt":{"type":"number"},"_valueUnsignedInt":{"$ref":"#/definitions/Element"},"valueUri":{"type":"string","pattern":"^\\S*$"},"_valueUri":{"$ref":"#/definitions/Element"},"valueUrl":{"type":"string","pattern":"^\\S*$"},"_valueUrl":{"$ref":"#/definitions/Element"},"valueUuid":{"type":"string","pattern":"^urn:uuid:[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$"},"_valueUuid":{"$ref":"#/definitions/Element"},"valueAddress":{"$ref":"#/definitions/Address"},"valueAge":{"$ref":"#/definitions/Age"},"valueAnnotation":{"$ref":"#/definitions/Annotation"},"valueAttachment":{"$ref":"#/definitions/Attachment"},"valueCodeableConcept":{"$ref":"#/definitions/CodeableConcept"},"valueCoding":{"$ref":"#/definitions/Coding"},"valueContactPoint":{"$ref":"#/definitions/ContactPoint"},"valueCount":{"$ref":"#/definitions/Count"},"valueDistance":{"$ref":"#/definitions/Distance"},"valueDuration":{"$ref":"#/definitions/Duration"},"valueHumanName":{"$ref":"#/definitions/HumanName"},"valueIdentifier":{"$ref":"#/definitions/Identifier"},"valueMoney":{"$ref":"#/definitions/Money"},"valuePeriod":{"$ref":"#/definitions/Period"},"valueQuantity":{"$ref":"#/definitions/Quantity"},"valueRange":{"$ref":"#/definitions/Range"},"valueRatio":{"$ref":"#/definitions/Ratio"},"valueReference":{"$ref":"#/definitions/Reference"},"valueSampledData":{"$ref":"#/definitions/SampledData"},"valueSignature":{"$ref":"#/definitions/Signature"},"valueTiming":{"$ref":"#/definitions/Timing"},"valueContactDetail":{"$ref":"#/definitions/ContactDetail"},"valueContributor":{"$ref":"#/definitions/Contributor"},"valueDataRequirement":{"$ref":"#/definitions/DataRequirement"},"valueExpression":{"$ref":"#/definitions/Expression"},"valueParameterDefinition":{"$ref":"#/definitions/ParameterDefinition"},"valueRelatedArtifact":{"$ref":"#/definitions/RelatedArtifact"},"valueTriggerDefinition":{"$ref":"#/definitions/TriggerDefinition"},"valueUsageContext":{"$ref":"#/definitions/UsageContext"},"valueDosage":{"$ref":"#/definitions/Dosage"}},"required":["url"],"choices":[{"element":"value[x]","properties":["valueBase64Binary","valueBoolean","valueCanonical","valueCode","valueDate","valueDateTime","valueDecimal","valueId","valueInstant","valueInteger","valueMarkdown","valueOid","valuePositiveInt","valueString","valueTime","valueUnsignedInt","valueUri","valueUrl","valueUuid","valueAddress","valueAge","valueAnnotation","valueAttachment","valueCodeableConcept","valueCoding","valueContactPoint","valueCount","valueDistance","valueDuration","valueHumanName","valueIdentifier","valueMoney","valuePeriod","valueQuantity","valueRange","valueRatio","valueReference","valueSampledData","valueSignature","valueTiming","valueContactDetail","valueContributor","valueDataRequirement","valueExpression","valueParameterDefinition","valueRelatedArtifact","valueTriggerDefinition","valueUsageContext","valueDosage"],"required":false}],"additionalProperties":false};
const schema12 = {"type":"string","pattern":"^\\S*$"};
const pattern2 = new RegExp("^\\S*$", "u");

function validate30(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(typeof data === "string"){
if(!pattern2.test(data)){
const err0 = {instancePath,schemaPath:"#/pattern",keyword:"pattern",params:{pattern: "^\\S*$"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
else {
const err1 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
validate30.errors = vErrors;
return errors === 0;
}

const schema13 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}}},"additionalProperties":false};
const wrapper0 = {validate: validate28};

function validate32(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
for(const key0 in data){
if(!((key0 === "id") || (key0 === "extension"))){
const err0 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err1 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(wrapper0.validate(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? wrapper0.validate.errors : vErrors.concat(wrapper0.validate.errors);
errors = vErrors.length;
}
}
}
else {
const err2 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
}
else {
const err3 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
validate32.errors = vErrors;
return errors === 0;
}

const schema14 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"use":{"enum":["home","work","temp","old","billing"]},"_use":{"$ref":"#/definitions/Element"},"type":{"enum":["postal","physical","both"]},"_type":{"$ref":"#/definitions/Element"},"text":{"$ref":"#/definitions/string"},"_text":{"$ref":"#/definitions/Element"},"line":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/string"}},"_line":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Element"}},"city":{"$ref":"#/definitions/string"},"_city":{"$ref":"#/definitions/Element"},"district":{"$ref":"#/definitions/string"},"_district":{"$ref":"#/definitions/Element"},"state":{"$ref":"#/definitions/string"},"_state":{"$ref":"#/definitions/Element"},"postalCode":{"$ref":"#/definitions/string"},"_postalCode":{"$ref":"#/definitions/Element"},"country":{"$ref":"#/definitions/string"},"_country":{"$ref":"#/definitions/Element"},"period":{"$ref":"#/definitions/Period"}},"additionalProperties":false};
const schema15 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"start":{"$ref":"#/definitions/dateTime"},"_start":{"$ref":"#/definitions/Element"},"end":{"$ref":"#/definitions/dateTime"},"_end":{"$ref":"#/definitions/Element"}},"additionalProperties":false};
const schema16 = {"type":"string","pattern":"^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1])(T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00)))?)?)?$"};
const pattern7 = new RegExp("^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1])(T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00)))?)?)?$", "u");

function validate74(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(typeof data === "string"){
if(!pattern7.test(data)){
const err0 = {instancePath,schemaPath:"#/pattern",keyword:"pattern",params:{pattern: "^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1])(T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00)))?)?)?$"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
else {
const err1 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
validate74.errors = vErrors;
return errors === 0;
}


function validate72(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
for(const key0 in data){
if(!((((((key0 === "id") || (key0 === "extension")) || (key0 === "start")) || (key0 === "_start")) || (key0 === "end")) || (key0 === "_end"))){
const err0 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err1 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(wrapper0.validate(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? wrapper0.validate.errors : vErrors.concat(wrapper0.validate.errors);
errors = vErrors.length;
}
}
}
else {
const err2 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.start !== undefined){
if(!(validate74(data.start, {instancePath:instancePath+"/start",parentData:data,parentDataProperty:"start",rootData}))){
vErrors = vErrors === null ? validate74.errors : vErrors.concat(validate74.errors);
errors = vErrors.length;
}
}
if(data._start !== undefined){
if(!(validate32(data._start, {instancePath:instancePath+"/_start",parentData:data,parentDataProperty:"_start",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.end !== undefined){
if(!(validate74(data.end, {instancePath:instancePath+"/end",parentData:data,parentDataProperty:"end",rootData}))){
vErrors = vErrors === null ? validate74.errors : vErrors.concat(validate74.errors);
errors = vErrors.length;
}
}
if(data._end !== undefined){
if(!(validate32(data._end, {instancePath:instancePath+"/_end",parentData:data,parentDataProperty:"_end",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
}
else {
const err3 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
validate72.errors = vErrors;
return errors === 0;
}


function validate54(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
for(const key0 in data){
if(!(func2.call(schema14.properties, key0))){
const err0 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err1 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(wrapper0.validate(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? wrapper0.validate.errors : vErrors.concat(wrapper0.validate.errors);
errors = vErrors.length;
}
}
}
else {
const err2 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.use !== undefined){
let data3 = data.use;
if(!(((((data3 === "home") || (data3 === "work")) || (data3 === "temp")) || (data3 === "old")) || (data3 === "billing"))){
const err3 = {instancePath:instancePath+"/use",schemaPath:"#/properties/use/enum",keyword:"enum",params:{allowedValues: schema14.properties.use.enum}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data._use !== undefined){
if(!(validate32(data._use, {instancePath:instancePath+"/_use",parentData:data,parentDataProperty:"_use",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.type !== undefined){
let data5 = data.type;
if(!(((data5 === "postal") || (data5 === "physical")) || (data5 === "both"))){
const err4 = {instancePath:instancePath+"/type",schemaPath:"#/properties/type/enum",keyword:"enum",params:{allowedValues: schema14.properties.type.enum}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data._type !== undefined){
if(!(validate32(data._type, {instancePath:instancePath+"/_type",parentData:data,parentDataProperty:"_type",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.text !== undefined){
if(!(validate26(data.text, {instancePath:instancePath+"/text",parentData:data,parentDataProperty:"text",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._text !== undefined){
if(!(validate32(data._text, {instancePath:instancePath+"/_text",parentData:data,parentDataProperty:"_text",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.line !== undefined){
let data9 = data.line;
if(Array.isArray(data9)){
if(data9.length < 1){
const err5 = {instancePath:instancePath+"/line",schemaPath:"#/properties/line/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
const len1 = data9.length;
for(let i1=0; i1<len1; i1++){
if(!(validate26(data9[i1], {instancePath:instancePath+"/line/" + i1,parentData:data9,parentDataProperty:i1,rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
}
else {
const err6 = {instancePath:instancePath+"/line",schemaPath:"#/properties/line/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
if(data._line !== undefined){
let data11 = data._line;
if(Array.isArray(data11)){
if(data11.length < 1){
const err7 = {instancePath:instancePath+"/_line",schemaPath:"#/properties/_line/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
const len2 = data11.length;
for(let i2=0; i2<len2; i2++){
if(!(validate32(data11[i2], {instancePath:instancePath+"/_line/" + i2,parentData:data11,parentDataProperty:i2,rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
}
else {
const err8 = {instancePath:instancePath+"/_line",schemaPath:"#/properties/_line/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
}
if(data.city !== undefined){
if(!(validate26(data.city, {instancePath:instancePath+"/city",parentData:data,parentDataProperty:"city",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._city !== undefined){
if(!(validate32(data._city, {instancePath:instancePath+"/_city",parentData:data,parentDataProperty:"_city",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.district !== undefined){
if(!(validate26(data.district, {instancePath:instancePath+"/district",parentData:data,parentDataProperty:"district",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._district !== undefined){
if(!(validate32(data._district, {instancePath:instancePath+"/_district",parentData:data,parentDataProperty:"_district",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.state !== undefined){
if(!(validate26(data.state, {instancePath:instancePath+"/state",parentData:data,parentDataProperty:"state",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._state !== undefined){
if(!(validate32(data._state, {instancePath:instancePath+"/_state",parentData:data,parentDataProperty:"_state",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.postalCode !== undefined){
if(!(validate26(data.postalCode, {instancePath:instancePath+"/postalCode",parentData:data,parentDataProperty:"postalCode",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._postalCode !== undefined){
if(!(validate32(data._postalCode, {instancePath:instancePath+"/_postalCode",parentData:data,parentDataProperty:"_postalCode",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.country !== undefined){
if(!(validate26(data.country, {instancePath:instancePath+"/country",parentData:data,parentDataProperty:"country",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._country !== undefined){
if(!(validate32(data._country, {instancePath:instancePath+"/_country",parentData:data,parentDataProperty:"_country",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.period !== undefined){
if(!(validate72(data.period, {instancePath:instancePath+"/period",parentData:data,parentDataProperty:"period",rootData}))){
vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
errors = vErrors.length;
}
}
}
else {
const err9 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
validate54.errors = vErrors;
return errors === 0;
}

const schema17 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"value":{"$ref":"#/definitions/decimal"},"_value":{"$ref":"#/definitions/Element"},"comparator":{"enum":["<","<=",">=",">"]},"_comparator":{"$ref":"#/definitions/Element"},"unit":{"$ref":"#/definitions/string"},"_unit":{"$ref":"#/definitions/Element"},"system":{"$ref":"#/definitions/uri"},"_system":{"$ref":"#/definitions/Element"},"code":{"$ref":"#/definitions/code"},"_code":{"$ref":"#/definitions/Element"}},"additionalProperties":false};
const schema18 = {"type":"number"};

function validate83(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(!((typeof data == "number") && (isFinite(data)))){
const err0 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "number"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
validate83.errors = vErrors;
return errors === 0;
}

const schema19 = {"type":"string","pattern":"^[^\\s]+(\\s[^\\s]+)*$"};
const pattern5 = new RegExp("^[^\\s]+(\\s[^\\s]+)*$", "u");

function validate91(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(typeof data === "string"){
if(!pattern5.test(data)){
const err0 = {instancePath,schemaPath:"#/pattern",keyword:"pattern",params:{pattern: "^[^\\s]+(\\s[^\\s]+)*$"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
else {
const err1 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
validate91.errors = vErrors;
return errors === 0;
}


function validate81(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
for(const key0 in data){
if(!(func2.call(schema17.properties, key0))){
const err0 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err1 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(wrapper0.validate(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? wrapper0.validate.errors : vErrors.concat(wrapper0.validate.errors);
errors = vErrors.length;
}
}
}
else {
const err2 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.value !== undefined){
if(!(validate83(data.value, {instancePath:instancePath+"/value",parentData:data,parentDataProperty:"value",rootData}))){
vErrors = vErrors === null ? validate83.errors : vErrors.concat(validate83.errors);
errors = vErrors.length;
}
}
if(data._value !== undefined){
if(!(validate32(data._value, {instancePath:instancePath+"/_value",parentData:data,parentDataProperty:"_value",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.comparator !== undefined){
let data5 = data.comparator;
if(!((((data5 === "<") || (data5 === "<=")) || (data5 === ">=")) || (data5 === ">"))){
const err3 = {instancePath:instancePath+"/comparator",schemaPath:"#/properties/comparator/enum",keyword:"enum",params:{allowedValues: schema17.properties.comparator.enum}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data._comparator !== undefined){
if(!(validate32(data._comparator, {instancePath:instancePath+"/_comparator",parentData:data,parentDataProperty:"_comparator",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.unit !== undefined){
if(!(validate26(data.unit, {instancePath:instancePath+"/unit",parentData:data,parentDataProperty:"unit",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._unit !== undefined){
if(!(validate32(data._unit, {instancePath:instancePath+"/_unit",parentData:data,parentDataProperty:"_unit",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.system !== undefined){
if(!(validate30(data.system, {instancePath:instancePath+"/system",parentData:data,parentDataProperty:"system",rootData}))){
vErrors = vErrors === null ? validate30.errors : vErrors.concat(validate30.errors);
errors = vErrors.length;
}
}
if(data._system !== undefined){
if(!(validate32(data._system, {instancePath:instancePath+"/_system",parentData:data,parentDataProperty:"_system",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.code !== undefined){
if(!(validate91(data.code, {instancePath:instancePath+"/code",parentData:data,parentDataProperty:"code",rootData}))){
vErrors = vErrors === null ? validate91.errors : vErrors.concat(validate91.errors);
errors = vErrors.length;
}
}
if(data._code !== undefined){
if(!(validate32(data._code, {instancePath:instancePath+"/_code",parentData:data,parentDataProperty:"_code",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
}
else {
const err4 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
validate81.errors = vErrors;
return errors === 0;
}

const schema20 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"authorReference":{"$ref":"#/definitions/Reference"},"authorString":{"type":"string","pattern":"^[ \\r\\n\\t\\S]+$"},"_authorString":{"$ref":"#/definitions/Element"},"time":{"$ref":"#/definitions/dateTime"},"_time":{"$ref":"#/definitions/Element"},"text":{"$ref":"#/definitions/markdown"},"_text":{"$ref":"#/definitions/Element"}},"required":["text"],"choices":[{"element":"author[x]","properties":["authorReference","authorString"],"required":false}],"additionalProperties":false};
const schema21 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"reference":{"$ref":"#/definitions/string"},"_reference":{"$ref":"#/definitions/Element"},"type":{"$ref":"#/definitions/uri"},"_type":{"$ref":"#/definitions/Element"},"identifier":{"$ref":"#/definitions/Identifier"},"display":{"$ref":"#/definitions/string"},"_display":{"$ref":"#/definitions/Element"}},"additionalProperties":false};
const schema22 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"use":{"enum":["usual","official","temp","secondary","old"]},"_use":{"$ref":"#/definitions/Element"},"type":{"$ref":"#/definitions/CodeableConcept"},"system":{"$ref":"#/definitions/uri"},"_system":{"$ref":"#/definitions/Element"},"value":{"$ref":"#/definitions/string"},"_value":{"$ref":"#/definitions/Element"},"period":{"$ref":"#/definitions/Period"},"assigner":{"$ref":"#/definitions/Reference"}},"additionalProperties":false};
const schema23 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"coding":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Coding"}},"text":{"$ref":"#/definitions/string"},"_text":{"$ref":"#/definitions/Element"}},"additionalProperties":false};
const schema24 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"system":{"$ref":"#/definitions/uri"},"_system":{"$ref":"#/definitions/Element"},"version":{"$ref":"#/definitions/string"},"_version":{"$ref":"#/definitions/Element"},"code":{"$ref":"#/definitions/code"},"_code":{"$ref":"#/definitions/Element"},"display":{"$ref":"#/definitions/string"},"_display":{"$ref":"#/definitions/Element"},"userSelected":{"$ref":"#/definitions/boolean"},"_userSelected":{"$ref":"#/definitions/Element"}},"additionalProperties":false};
const schema25 = {"type":"boolean"};

function validate118(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(typeof data !== "boolean"){
const err0 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "boolean"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
validate118.errors = vErrors;
return errors === 0;
}


function validate108(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
for(const key0 in data){
if(!(func2.call(schema24.properties, key0))){
const err0 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err1 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(wrapper0.validate(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? wrapper0.validate.errors : vErrors.concat(wrapper0.validate.errors);
errors = vErrors.length;
}
}
}
else {
const err2 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.system !== undefined){
if(!(validate30(data.system, {instancePath:instancePath+"/system",parentData:data,parentDataProperty:"system",rootData}))){
vErrors = vErrors === null ? validate30.errors : vErrors.concat(validate30.errors);
errors = vErrors.length;
}
}
if(data._system !== undefined){
if(!(validate32(data._system, {instancePath:instancePath+"/_system",parentData:data,parentDataProperty:"_system",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.version !== undefined){
if(!(validate26(data.version, {instancePath:instancePath+"/version",parentData:data,parentDataProperty:"version",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._version !== undefined){
if(!(validate32(data._version, {instancePath:instancePath+"/_version",parentData:data,parentDataProperty:"_version",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.code !== undefined){
if(!(validate91(data.code, {instancePath:instancePath+"/code",parentData:data,parentDataProperty:"code",rootData}))){
vErrors = vErrors === null ? validate91.errors : vErrors.concat(validate91.errors);
errors = vErrors.length;
}
}
if(data._code !== undefined){
if(!(validate32(data._code, {instancePath:instancePath+"/_code",parentData:data,parentDataProperty:"_code",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.display !== undefined){
if(!(validate26(data.display, {instancePath:instancePath+"/display",parentData:data,parentDataProperty:"display",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._display !== undefined){
if(!(validate32(data._display, {instancePath:instancePath+"/_display",parentData:data,parentDataProperty:"_display",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.userSelected !== undefined){
if(!(validate118(data.userSelected, {instancePath:instancePath+"/userSelected",parentData:data,parentDataProperty:"userSelected",rootData}))){
vErrors = vErrors === null ? validate118.errors : vErrors.concat(validate118.errors);
errors = vErrors.length;
}
}
if(data._userSelected !== undefined){
if(!(validate32(data._userSelected, {instancePath:instancePath+"/_userSelected",parentData:data,parentDataProperty:"_userSelected",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
}
else {
const err3 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
validate108.errors = vErrors;
return errors === 0;
}


function validate106(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
for(const key0 in data){
if(!(((((key0 === "id") || (key0 === "extension")) || (key0 === "coding")) || (key0 === "text")) || (key0 === "_text"))){
const err0 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err1 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(wrapper0.validate(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? wrapper0.validate.errors : vErrors.concat(wrapper0.validate.errors);
errors = vErrors.length;
}
}
}
else {
const err2 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.coding !== undefined){
let data3 = data.coding;
if(Array.isArray(data3)){
if(data3.length < 1){
const err3 = {instancePath:instancePath+"/coding",schemaPath:"#/properties/coding/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
const len1 = data3.length;
for(let i1=0; i1<len1; i1++){
if(!(validate108(data3[i1], {instancePath:instancePath+"/coding/" + i1,parentData:data3,parentDataProperty:i1,rootData}))){
vErrors = vErrors === null ? validate108.errors : vErrors.concat(validate108.errors);
errors = vErrors.length;
}
}
}
else {
const err4 = {instancePath:instancePath+"/coding",schemaPath:"#/properties/coding/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.text !== undefined){
if(!(validate26(data.text, {instancePath:instancePath+"/text",parentData:data,parentDataProperty:"text",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._text !== undefined){
if(!(validate32(data._text, {instancePath:instancePath+"/_text",parentData:data,parentDataProperty:"_text",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
}
else {
const err5 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
validate106.errors = vErrors;
return errors === 0;
}

const wrapper10 = {validate: validate97};

function validate103(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
for(const key0 in data){
if(!(func2.call(schema22.properties, key0))){
const err0 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err1 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(wrapper0.validate(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? wrapper0.validate.errors : vErrors.concat(wrapper0.validate.errors);
errors = vErrors.length;
}
}
}
else {
const err2 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.use !== undefined){
let data3 = data.use;
if(!(((((data3 === "usual") || (data3 === "official")) || (data3 === "temp")) || (data3 === "secondary")) || (data3 === "old"))){
const err3 = {instancePath:instancePath+"/use",schemaPath:"#/properties/use/enum",keyword:"enum",params:{allowedValues: schema22.properties.use.enum}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data._use !== undefined){
if(!(validate32(data._use, {instancePath:instancePath+"/_use",parentData:data,parentDataProperty:"_use",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.type !== undefined){
if(!(validate106(data.type, {instancePath:instancePath+"/type",parentData:data,parentDataProperty:"type",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.system !== undefined){
if(!(validate30(data.system, {instancePath:instancePath+"/system",parentData:data,parentDataProperty:"system",rootData}))){
vErrors = vErrors === null ? validate30.errors : vErrors.concat(validate30.errors);
errors = vErrors.length;
}
}
if(data._system !== undefined){
if(!(validate32(data._system, {instancePath:instancePath+"/_system",parentData:data,parentDataProperty:"_system",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.value !== undefined){
if(!(validate26(data.value, {instancePath:instancePath+"/value",parentData:data,parentDataProperty:"value",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._value !== undefined){
if(!(validate32(data._value, {instancePath:instancePath+"/_value",parentData:data,parentDataProperty:"_value",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.period !== undefined){
if(!(validate72(data.period, {instancePath:instancePath+"/period",parentData:data,parentDataProperty:"period",rootData}))){
vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
errors = vErrors.length;
}
}
if(data.assigner !== undefined){
if(!(wrapper10.validate(data.assigner, {instancePath:instancePath+"/assigner",parentData:data,parentDataProperty:"assigner",rootData}))){
vErrors = vErrors === null ? wrapper10.validate.errors : vErrors.concat(wrapper10.validate.errors);
errors = vErrors.length;
}
}
}
else {
const err4 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
validate103.errors = vErrors;
return errors === 0;
}


function validate97(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
for(const key0 in data){
if(!(func2.call(schema21.properties, key0))){
const err0 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err1 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(wrapper0.validate(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? wrapper0.validate.errors : vErrors.concat(wrapper0.validate.errors);
errors = vErrors.length;
}
}
}
else {
const err2 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.reference !== undefined){
if(!(validate26(data.reference, {instancePath:instancePath+"/reference",parentData:data,parentDataProperty:"reference",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._reference !== undefined){
if(!(validate32(data._reference, {instancePath:instancePath+"/_reference",parentData:data,parentDataProperty:"_reference",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.type !== undefined){
if(!(validate30(data.type, {instancePath:instancePath+"/type",parentData:data,parentDataProperty:"type",rootData}))){
vErrors = vErrors === null ? validate30.errors : vErrors.concat(validate30.errors);
errors = vErrors.length;
}
}
if(data._type !== undefined){
if(!(validate32(data._type, {instancePath:instancePath+"/_type",parentData:data,parentDataProperty:"_type",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.identifier !== undefined){
if(!(validate103(data.identifier, {instancePath:instancePath+"/identifier",parentData:data,parentDataProperty:"identifier",rootData}))){
vErrors = vErrors === null ? validate103.errors : vErrors.concat(validate103.errors);
errors = vErrors.length;
}
}
if(data.display !== undefined){
if(!(validate26(data.display, {instancePath:instancePath+"/display",parentData:data,parentDataProperty:"display",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._display !== undefined){
if(!(validate32(data._display, {instancePath:instancePath+"/_display",parentData:data,parentDataProperty:"_display",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
}
else {
const err3 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
validate97.errors = vErrors;
return errors === 0;
}

const schema26 = {"type":"string","pattern":"^[ \\r\\n\\t\\S]+$"};

function validate137(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(typeof data === "string"){
if(!pattern1.test(data)){
const err0 = {instancePath,schemaPath:"#/pattern",keyword:"pattern",params:{pattern: "^[ \\r\\n\\t\\S]+$"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
else {
const err1 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
validate137.errors = vErrors;
return errors === 0;
}


function validate95(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.text === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "text"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
for(const key0 in data){
if(!(func2.call(schema20.properties, key0))){
const err1 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err2 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(wrapper0.validate(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? wrapper0.validate.errors : vErrors.concat(wrapper0.validate.errors);
errors = vErrors.length;
}
}
}
else {
const err3 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.authorReference !== undefined){
if(!(validate97(data.authorReference, {instancePath:instancePath+"/authorReference",parentData:data,parentDataProperty:"authorReference",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
if(data.authorString !== undefined){
let data4 = data.authorString;
if(typeof data4 === "string"){
if(!pattern1.test(data4)){
const err4 = {instancePath:instancePath+"/authorString",schemaPath:"#/properties/authorString/pattern",keyword:"pattern",params:{pattern: "^[ \\r\\n\\t\\S]+$"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
else {
const err5 = {instancePath:instancePath+"/authorString",schemaPath:"#/properties/authorString/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
if(data._authorString !== undefined){
if(!(validate32(data._authorString, {instancePath:instancePath+"/_authorString",parentData:data,parentDataProperty:"_authorString",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.time !== undefined){
if(!(validate74(data.time, {instancePath:instancePath+"/time",parentData:data,parentDataProperty:"time",rootData}))){
vErrors = vErrors === null ? validate74.errors : vErrors.concat(validate74.errors);
errors = vErrors.length;
}
}
if(data._time !== undefined){
if(!(validate32(data._time, {instancePath:instancePath+"/_time",parentData:data,parentDataProperty:"_time",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.text !== undefined){
if(!(validate137(data.text, {instancePath:instancePath+"/text",parentData:data,parentDataProperty:"text",rootData}))){
vErrors = vErrors === null ? validate137.errors : vErrors.concat(validate137.errors);
errors = vErrors.length;
}
}
if(data._text !== undefined){
if(!(validate32(data._text, {instancePath:instancePath+"/_text",parentData:data,parentDataProperty:"_text",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
let count0 = 0;
if(data["authorReference"] !== undefined){
count0++;
}
if(data["authorString"] !== undefined){
count0++;
}
if(count0 > 1){
const err6 = {instancePath,schemaPath:"#/choices",keyword:"choices",params:{}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
else {
const err7 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
validate95.errors = vErrors;
return errors === 0;
}

const schema27 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"contentType":{"$ref":"#/definitions/code"},"_contentType":{"$ref":"#/definitions/Element"},"language":{"$ref":"#/definitions/code"},"_language":{"$ref":"#/definitions/Element"},"data":{"$ref":"#/definitions/base64Binary"},"_data":{"$ref":"#/definitions/Element"},"url":{"$ref":"#/definitions/url"},"_url":{"$ref":"#/definitions/Element"},"size":{"$ref":"#/definitions/unsignedInt"},"_size":{"$ref":"#/definitions/Element"},"hash":{"$ref":"#/definitions/base64Binary"},"_hash":{"$ref":"#/definitions/Element"},"title":{"$ref":"#/definitions/string"},"_title":{"$ref":"#/definitions/Element"},"creation":{"$ref":"#/definitions/dateTime"},"_creation":{"$ref":"#/definitions/Element"}},"additionalProperties":false};
const schema28 = {"type":"string"};

function validate147(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(typeof data !== "string"){
const err0 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
validate147.errors = vErrors;
return errors === 0;
}

const schema29 = {"type":"string","pattern":"^\\S*$"};

function validate150(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(typeof data === "string"){
if(!pattern2.test(data)){
const err0 = {instancePath,schemaPath:"#/pattern",keyword:"pattern",params:{pattern: "^\\S*$"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
else {
const err1 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
validate150.errors = vErrors;
return errors === 0;
}

const schema30 = {"type":"integer","minimum":0};

function validate153(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(!(((typeof data == "number") && (!(data % 1) && !isNaN(data))) && (isFinite(data)))){
const err0 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "integer"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if((typeof data == "number") && (isFinite(data))){
if(data < 0 || isNaN(data)){
const err1 = {instancePath,schemaPath:"#/minimum",keyword:"minimum",params:{comparison: ">=", limit: 0}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
validate153.errors = vErrors;
return errors === 0;
}


function validate141(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
for(const key0 in data){
if(!(func2.call(schema27.properties, key0))){
const err0 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err1 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(wrapper0.validate(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? wrapper0.validate.errors : vErrors.concat(wrapper0.validate.errors);
errors = vErrors.length;
}
}
}
else {
const err2 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.contentType !== undefined){
if(!(validate91(data.contentType, {instancePath:instancePath+"/contentType",parentData:data,parentDataProperty:"contentType",rootData}))){
vErrors = vErrors === null ? validate91.errors : vErrors.concat(validate91.errors);
errors = vErrors.length;
}
}
if(data._contentType !== undefined){
if(!(validate32(data._contentType, {instancePath:instancePath+"/_contentType",parentData:data,parentDataProperty:"_contentType",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.language !== undefined){
if(!(validate91(data.language, {instancePath:instancePath+"/language",parentData:data,parentDataProperty:"language",rootData}))){
vErrors = vErrors === null ? validate91.errors : vErrors.concat(validate91.errors);
errors = vErrors.length;
}
}
if(data._language !== undefined){
if(!(validate32(data._language, {instancePath:instancePath+"/_language",parentData:data,parentDataProperty:"_language",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.data !== undefined){
if(!(validate147(data.data, {instancePath:instancePath+"/data",parentData:data,parentDataProperty:"data",rootData}))){
vErrors = vErrors === null ? validate147.errors : vErrors.concat(validate147.errors);
errors = vErrors.length;
}
}
if(data._data !== undefined){
if(!(validate32(data._data, {instancePath:instancePath+"/_data",parentData:data,parentDataProperty:"_data",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.url !== undefined){
if(!(validate150(data.url, {instancePath:instancePath+"/url",parentData:data,parentDataProperty:"url",rootData}))){
vErrors = vErrors === null ? validate150.errors : vErrors.concat(validate150.errors);
errors = vErrors.length;
}
}
if(data._url !== undefined){
if(!(validate32(data._url, {instancePath:instancePath+"/_url",parentData:data,parentDataProperty:"_url",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.size !== undefined){
if(!(validate153(data.size, {instancePath:instancePath+"/size",parentData:data,parentDataProperty:"size",rootData}))){
vErrors = vErrors === null ? validate153.errors : vErrors.concat(validate153.errors);
errors = vErrors.length;
}
}
if(data._size !== undefined){
if(!(validate32(data._size, {instancePath:instancePath+"/_size",parentData:data,parentDataProperty:"_size",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.hash !== undefined){
if(!(validate147(data.hash, {instancePath:instancePath+"/hash",parentData:data,parentDataProperty:"hash",rootData}))){
vErrors = vErrors === null ? validate147.errors : vErrors.concat(validate147.errors);
errors = vErrors.length;
}
}
if(data._hash !== undefined){
if(!(validate32(data._hash, {instancePath:instancePath+"/_hash",parentData:data,parentDataProperty:"_hash",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.title !== undefined){
if(!(validate26(data.title, {instancePath:instancePath+"/title",parentData:data,parentDataProperty:"title",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._title !== undefined){
if(!(validate32(data._title, {instancePath:instancePath+"/_title",parentData:data,parentDataProperty:"_title",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.creation !== undefined){
if(!(validate74(data.creation, {instancePath:instancePath+"/creation",parentData:data,parentDataProperty:"creation",rootData}))){
vErrors = vErrors === null ? validate74.errors : vErrors.concat(validate74.errors);
errors = vErrors.length;
}
}
if(data._creation !== undefined){
if(!(validate32(data._creation, {instancePath:instancePath+"/_creation",parentData:data,parentDataProperty:"_creation",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
}
else {
const err3 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
validate141.errors = vErrors;
return errors === 0;
}

const schema31 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"system":{"enum":["phone","fax","email","pager","url","sms","other"]},"_system":{"$ref":"#/definitions/Element"},"value":{"$ref":"#/definitions/string"},"_value":{"$ref":"#/definitions/Element"},"use":{"enum":["home","work","temp","old","mobile"]},"_use":{"$ref":"#/definitions/Element"},"rank":{"$ref":"#/definitions/positiveInt"},"_rank":{"$ref":"#/definitions/Element"},"period":{"$ref":"#/definitions/Period"}},"additionalProperties":false};
const schema32 = {"type":"integer","minimum":1};

function validate171(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(!(((typeof data == "number") && (!(data % 1) && !isNaN(data))) && (isFinite(data)))){
const err0 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "integer"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if((typeof data == "number") && (isFinite(data))){
if(data < 1 || isNaN(data)){
const err1 = {instancePath,schemaPath:"#/minimum",keyword:"minimum",params:{comparison: ">=", limit: 1}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
validate171.errors = vErrors;
return errors === 0;
}


function validate165(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
for(const key0 in data){
if(!(func2.call(schema31.properties, key0))){
const err0 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err1 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(wrapper0.validate(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? wrapper0.validate.errors : vErrors.concat(wrapper0.validate.errors);
errors = vErrors.length;
}
}
}
else {
const err2 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.system !== undefined){
let data3 = data.system;
if(!(((((((data3 === "phone") || (data3 === "fax")) || (data3 === "email")) || (data3 === "pager")) || (data3 === "url")) || (data3 === "sms")) || (data3 === "other"))){
const err3 = {instancePath:instancePath+"/system",schemaPath:"#/properties/system/enum",keyword:"enum",params:{allowedValues: schema31.properties.system.enum}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data._system !== undefined){
if(!(validate32(data._system, {instancePath:instancePath+"/_system",parentData:data,parentDataProperty:"_system",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.value !== undefined){
if(!(validate26(data.value, {instancePath:instancePath+"/value",parentData:data,parentDataProperty:"value",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._value !== undefined){
if(!(validate32(data._value, {instancePath:instancePath+"/_value",parentData:data,parentDataProperty:"_value",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.use !== undefined){
let data7 = data.use;
if(!(((((data7 === "home") || (data7 === "work")) || (data7 === "temp")) || (data7 === "old")) || (data7 === "mobile"))){
const err4 = {instancePath:instancePath+"/use",schemaPath:"#/properties/use/enum",keyword:"enum",params:{allowedValues: schema31.properties.use.enum}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data._use !== undefined){
if(!(validate32(data._use, {instancePath:instancePath+"/_use",parentData:data,parentDataProperty:"_use",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.rank !== undefined){
if(!(validate171(data.rank, {instancePath:instancePath+"/rank",parentData:data,parentDataProperty:"rank",rootData}))){
vErrors = vErrors === null ? validate171.errors : vErrors.concat(validate171.errors);
errors = vErrors.length;
}
}
if(data._rank !== undefined){
if(!(validate32(data._rank, {instancePath:instancePath+"/_rank",parentData:data,parentDataProperty:"_rank",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.period !== undefined){
if(!(validate72(data.period, {instancePath:instancePath+"/period",parentData:data,parentDataProperty:"period",rootData}))){
vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
errors = vErrors.length;
}
}
}
else {
const err5 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
validate165.errors = vErrors;
return errors === 0;
}

const schema33 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"value":{"$ref":"#/definitions/decimal"},"_value":{"$ref":"#/definitions/Element"},"comparator":{"enum":["<","<=",">=",">"]},"_comparator":{"$ref":"#/definitions/Element"},"unit":{"$ref":"#/definitions/string"},"_unit":{"$ref":"#/definitions/Element"},"system":{"$ref":"#/definitions/uri"},"_system":{"$ref":"#/definitions/Element"},"code":{"$ref":"#/definitions/code"},"_code":{"$ref":"#/definitions/Element"}},"additionalProperties":false};

function validate176(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
for(const key0 in data){
if(!(func2.call(schema33.properties, key0))){
const err0 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err1 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(wrapper0.validate(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? wrapper0.validate.errors : vErrors.concat(wrapper0.validate.errors);
errors = vErrors.length;
}
}
}
else {
const err2 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.value !== undefined){
if(!(validate83(data.value, {instancePath:instancePath+"/value",parentData:data,parentDataProperty:"value",rootData}))){
vErrors = vErrors === null ? validate83.errors : vErrors.concat(validate83.errors);
errors = vErrors.length;
}
}
if(data._value !== undefined){
if(!(validate32(data._value, {instancePath:instancePath+"/_value",parentData:data,parentDataProperty:"_value",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.comparator !== undefined){
let data5 = data.comparator;
if(!((((data5 === "<") || (data5 === "<=")) || (data5 === ">=")) || (data5 === ">"))){
const err3 = {instancePath:instancePath+"/comparator",schemaPath:"#/properties/comparator/enum",keyword:"enum",params:{allowedValues: schema33.properties.comparator.enum}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data._comparator !== undefined){
if(!(validate32(data._comparator, {instancePath:instancePath+"/_comparator",parentData:data,parentDataProperty:"_comparator",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.unit !== undefined){
if(!(validate26(data.unit, {instancePath:instancePath+"/unit",parentData:data,parentDataProperty:"unit",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._unit !== undefined){
if(!(validate32(data._unit, {instancePath:instancePath+"/_unit",parentData:data,parentDataProperty:"_unit",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.system !== undefined){
if(!(validate30(data.system, {instancePath:instancePath+"/system",parentData:data,parentDataProperty:"system",rootData}))){
vErrors = vErrors === null ? validate30.errors : vErrors.concat(validate30.errors);
errors = vErrors.length;
}
}
if(data._system !== undefined){
if(!(validate32(data._system, {instancePath:instancePath+"/_system",parentData:data,parentDataProperty:"_system",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.code !== undefined){
if(!(validate91(data.code, {instancePath:instancePath+"/code",parentData:data,parentDataProperty:"code",rootData}))){
vErrors = vErrors === null ? validate91.errors : vErrors.concat(validate91.errors);
errors = vErrors.length;
}
}
if(data._code !== undefined){
if(!(validate32(data._code, {instancePath:instancePath+"/_code",parentData:data,parentDataProperty:"_code",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
}
else {
const err4 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
validate176.errors = vErrors;
return errors === 0;
}

const schema34 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"value":{"$ref":"#/definitions/decimal"},"_value":{"$ref":"#/definitions/Element"},"comparator":{"enum":["<","<=",">=",">"]},"_comparator":{"$ref":"#/definitions/Element"},"unit":{"$ref":"#/definitions/string"},"_unit":{"$ref":"#/definitions/Element"},"system":{"$ref":"#/definitions/uri"},"_system":{"$ref":"#/definitions/Element"},"code":{"$ref":"#/definitions/code"},"_code":{"$ref":"#/definitions/Element"}},"additionalProperties":false};

function validate188(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
for(const key0 in data){
if(!(func2.call(schema34.properties, key0))){
const err0 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err1 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(wrapper0.validate(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? wrapper0.validate.errors : vErrors.concat(wrapper0.validate.errors);
errors = vErrors.length;
}
}
}
else {
const err2 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.value !== undefined){
if(!(validate83(data.value, {instancePath:instancePath+"/value",parentData:data,parentDataProperty:"value",rootData}))){
vErrors = vErrors === null ? validate83.errors : vErrors.concat(validate83.errors);
errors = vErrors.length;
}
}
if(data._value !== undefined){
if(!(validate32(data._value, {instancePath:instancePath+"/_value",parentData:data,parentDataProperty:"_value",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.comparator !== undefined){
let data5 = data.comparator;
if(!((((data5 === "<") || (data5 === "<=")) || (data5 === ">=")) || (data5 === ">"))){
const err3 = {instancePath:instancePath+"/comparator",schemaPath:"#/properties/comparator/enum",keyword:"enum",params:{allowedValues: schema34.properties.comparator.enum}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data._comparator !== undefined){
if(!(validate32(data._comparator, {instancePath:instancePath+"/_comparator",parentData:data,parentDataProperty:"_comparator",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.unit !== undefined){
if(!(validate26(data.unit, {instancePath:instancePath+"/unit",parentData:data,parentDataProperty:"unit",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._unit !== undefined){
if(!(validate32(data._unit, {instancePath:instancePath+"/_unit",parentData:data,parentDataProperty:"_unit",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.system !== undefined){
if(!(validate30(data.system, {instancePath:instancePath+"/system",parentData:data,parentDataProperty:"system",rootData}))){
vErrors = vErrors === null ? validate30.errors : vErrors.concat(validate30.errors);
errors = vErrors.length;
}
}
if(data._system !== undefined){
if(!(validate32(data._system, {instancePath:instancePath+"/_system",parentData:data,parentDataProperty:"_system",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.code !== undefined){
if(!(validate91(data.code, {instancePath:instancePath+"/code",parentData:data,parentDataProperty:"code",rootData}))){
vErrors = vErrors === null ? validate91.errors : vErrors.concat(validate91.errors);
errors = vErrors.length;
}
}
if(data._code !== undefined){
if(!(validate32(data._code, {instancePath:instancePath+"/_code",parentData:data,parentDataProperty:"_code",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
}
else {
const err4 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
validate188.errors = vErrors;
return errors === 0;
}

const schema35 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"value":{"$ref":"#/definitions/decimal"},"_value":{"$ref":"#/definitions/Element"},"comparator":{"enum":["<","<=",">=",">"]},"_comparator":{"$ref":"#/definitions/Element"},"unit":{"$ref":"#/definitions/string"},"_unit":{"$ref":"#/definitions/Element"},"system":{"$ref":"#/definitions/uri"},"_system":{"$ref":"#/definitions/Element"},"code":{"$ref":"#/definitions/code"},"_code":{"$ref":"#/definitions/Element"}},"additionalProperties":false};

function validate200(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
for(const key0 in data){
if(!(func2.call(schema35.properties, key0))){
const err0 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err1 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(wrapper0.validate(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? wrapper0.validate.errors : vErrors.concat(wrapper0.validate.errors);
errors = vErrors.length;
}
}
}
else {
const err2 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.value !== undefined){
if(!(validate83(data.value, {instancePath:instancePath+"/value",parentData:data,parentDataProperty:"value",rootData}))){
vErrors = vErrors === null ? validate83.errors : vErrors.concat(validate83.errors);
errors = vErrors.length;
}
}
if(data._value !== undefined){
if(!(validate32(data._value, {instancePath:instancePath+"/_value",parentData:data,parentDataProperty:"_value",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.comparator !== undefined){
let data5 = data.comparator;
if(!((((data5 === "<") || (data5 === "<=")) || (data5 === ">=")) || (data5 === ">"))){
const err3 = {instancePath:instancePath+"/comparator",schemaPath:"#/properties/comparator/enum",keyword:"enum",params:{allowedValues: schema35.properties.comparator.enum}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data._comparator !== undefined){
if(!(validate32(data._comparator, {instancePath:instancePath+"/_comparator",parentData:data,parentDataProperty:"_comparator",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.unit !== undefined){
if(!(validate26(data.unit, {instancePath:instancePath+"/unit",parentData:data,parentDataProperty:"unit",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._unit !== undefined){
if(!(validate32(data._unit, {instancePath:instancePath+"/_unit",parentData:data,parentDataProperty:"_unit",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.system !== undefined){
if(!(validate30(data.system, {instancePath:instancePath+"/system",parentData:data,parentDataProperty:"system",rootData}))){
vErrors = vErrors === null ? validate30.errors : vErrors.concat(validate30.errors);
errors = vErrors.length;
}
}
if(data._system !== undefined){
if(!(validate32(data._system, {instancePath:instancePath+"/_system",parentData:data,parentDataProperty:"_system",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.code !== undefined){
if(!(validate91(data.code, {instancePath:instancePath+"/code",parentData:data,parentDataProperty:"code",rootData}))){
vErrors = vErrors === null ? validate91.errors : vErrors.concat(validate91.errors);
errors = vErrors.length;
}
}
if(data._code !== undefined){
if(!(validate32(data._code, {instancePath:instancePath+"/_code",parentData:data,parentDataProperty:"_code",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
}
else {
const err4 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
validate200.errors = vErrors;
return errors === 0;
}

const schema36 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"use":{"enum":["usual","official","temp","nickname","anonymous","old","maiden"]},"_use":{"$ref":"#/definitions/Element"},"text":{"$ref":"#/definitions/string"},"_text":{"$ref":"#/definitions/Element"},"family":{"$ref":"#/definitions/string"},"_family":{"$ref":"#/definitions/Element"},"given":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/string"}},"_given":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Element"}},"prefix":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/string"}},"_prefix":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Element"}},"suffix":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/string"}},"_suffix":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Element"}},"period":{"$ref":"#/definitions/Period"}},"additionalProperties":false};

function validate212(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
for(const key0 in data){
if(!(func2.call(schema36.properties, key0))){
const err0 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err1 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(wrapper0.validate(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? wrapper0.validate.errors : vErrors.concat(wrapper0.validate.errors);
errors = vErrors.length;
}
}
}
else {
const err2 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.use !== undefined){
let data3 = data.use;
if(!(((((((data3 === "usual") || (data3 === "official")) || (data3 === "temp")) || (data3 === "nickname")) || (data3 === "anonymous")) || (data3 === "old")) || (data3 === "maiden"))){
const err3 = {instancePath:instancePath+"/use",schemaPath:"#/properties/use/enum",keyword:"enum",params:{allowedValues: schema36.properties.use.enum}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data._use !== undefined){
if(!(validate32(data._use, {instancePath:instancePath+"/_use",parentData:data,parentDataProperty:"_use",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.text !== undefined){
if(!(validate26(data.text, {instancePath:instancePath+"/text",parentData:data,parentDataProperty:"text",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._text !== undefined){
if(!(validate32(data._text, {instancePath:instancePath+"/_text",parentData:data,parentDataProperty:"_text",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.family !== undefined){
if(!(validate26(data.family, {instancePath:instancePath+"/family",parentData:data,parentDataProperty:"family",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._family !== undefined){
if(!(validate32(data._family, {instancePath:instancePath+"/_family",parentData:data,parentDataProperty:"_family",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.given !== undefined){
let data9 = data.given;
if(Array.isArray(data9)){
if(data9.length < 1){
const err4 = {instancePath:instancePath+"/given",schemaPath:"#/properties/given/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
const len1 = data9.length;
for(let i1=0; i1<len1; i1++){
if(!(validate26(data9[i1], {instancePath:instancePath+"/given/" + i1,parentData:data9,parentDataProperty:i1,rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
}
else {
const err5 = {instancePath:instancePath+"/given",schemaPath:"#/properties/given/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
if(data._given !== undefined){
let data11 = data._given;
if(Array.isArray(data11)){
if(data11.length < 1){
const err6 = {instancePath:instancePath+"/_given",schemaPath:"#/properties/_given/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
const len2 = data11.length;
for(let i2=0; i2<len2; i2++){
if(!(validate32(data11[i2], {instancePath:instancePath+"/_given/" + i2,parentData:data11,parentDataProperty:i2,rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
}
else {
const err7 = {instancePath:instancePath+"/_given",schemaPath:"#/properties/_given/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
}
if(data.prefix !== undefined){
let data13 = data.prefix;
if(Array.isArray(data13)){
if(data13.length < 1){
const err8 = {instancePath:instancePath+"/prefix",schemaPath:"#/properties/prefix/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
const len3 = data13.length;
for(let i3=0; i3<len3; i3++){
if(!(validate26(data13[i3], {instancePath:instancePath+"/prefix/" + i3,parentData:data13,parentDataProperty:i3,rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
}
else {
const err9 = {instancePath:instancePath+"/prefix",schemaPath:"#/properties/prefix/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
}
if(data._prefix !== undefined){
let data15 = data._prefix;
if(Array.isArray(data15)){
if(data15.length < 1){
const err10 = {instancePath:instancePath+"/_prefix",schemaPath:"#/properties/_prefix/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err10];
}
else {
vErrors.push(err10);
}
errors++;
}
const len4 = data15.length;
for(let i4=0; i4<len4; i4++){
if(!(validate32(data15[i4], {instancePath:instancePath+"/_prefix/" + i4,parentData:data15,parentDataProperty:i4,rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
}
else {
const err11 = {instancePath:instancePath+"/_prefix",schemaPath:"#/properties/_prefix/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err11];
}
else {
vErrors.push(err11);
}
errors++;
}
}
if(data.suffix !== undefined){
let data17 = data.suffix;
if(Array.isArray(data17)){
if(data17.length < 1){
const err12 = {instancePath:instancePath+"/suffix",schemaPath:"#/properties/suffix/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err12];
}
else {
vErrors.push(err12);
}
errors++;
}
const len5 = data17.length;
for(let i5=0; i5<len5; i5++){
if(!(validate26(data17[i5], {instancePath:instancePath+"/suffix/" + i5,parentData:data17,parentDataProperty:i5,rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
}
else {
const err13 = {instancePath:instancePath+"/suffix",schemaPath:"#/properties/suffix/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err13];
}
else {
vErrors.push(err13);
}
errors++;
}
}
if(data._suffix !== undefined){
let data19 = data._suffix;
if(Array.isArray(data19)){
if(data19.length < 1){
const err14 = {instancePath:instancePath+"/_suffix",schemaPath:"#/properties/_suffix/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err14];
}
else {
vErrors.push(err14);
}
errors++;
}
const len6 = data19.length;
for(let i6=0; i6<len6; i6++){
if(!(validate32(data19[i6], {instancePath:instancePath+"/_suffix/" + i6,parentData:data19,parentDataProperty:i6,rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
}
else {
const err15 = {instancePath:instancePath+"/_suffix",schemaPath:"#/properties/_suffix/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err15];
}
else {
vErrors.push(err15);
}
errors++;
}
}
if(data.period !== undefined){
if(!(validate72(data.period, {instancePath:instancePath+"/period",parentData:data,parentDataProperty:"period",rootData}))){
vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
errors = vErrors.length;
}
}
}
else {
const err16 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err16];
}
else {
vErrors.push(err16);
}
errors++;
}
validate212.errors = vErrors;
return errors === 0;
}

const schema37 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"value":{"$ref":"#/definitions/decimal"},"_value":{"$ref":"#/definitions/Element"},"currency":{"$ref":"#/definitions/code"},"_currency":{"$ref":"#/definitions/Element"}},"additionalProperties":false};

function validate228(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
for(const key0 in data){
if(!((((((key0 === "id") || (key0 === "extension")) || (key0 === "value")) || (key0 === "_value")) || (key0 === "currency")) || (key0 === "_currency"))){
const err0 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err1 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(wrapper0.validate(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? wrapper0.validate.errors : vErrors.concat(wrapper0.validate.errors);
errors = vErrors.length;
}
}
}
else {
const err2 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.value !== undefined){
if(!(validate83(data.value, {instancePath:instancePath+"/value",parentData:data,parentDataProperty:"value",rootData}))){
vErrors = vErrors === null ? validate83.errors : vErrors.concat(validate83.errors);
errors = vErrors.length;
}
}
if(data._value !== undefined){
if(!(validate32(data._value, {instancePath:instancePath+"/_value",parentData:data,parentDataProperty:"_value",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.currency !== undefined){
if(!(validate91(data.currency, {instancePath:instancePath+"/currency",parentData:data,parentDataProperty:"currency",rootData}))){
vErrors = vErrors === null ? validate91.errors : vErrors.concat(validate91.errors);
errors = vErrors.length;
}
}
if(data._currency !== undefined){
if(!(validate32(data._currency, {instancePath:instancePath+"/_currency",parentData:data,parentDataProperty:"_currency",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
}
else {
const err3 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
validate228.errors = vErrors;
return errors === 0;
}

const schema38 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"value":{"$ref":"#/definitions/decimal"},"_value":{"$ref":"#/definitions/Element"},"comparator":{"enum":["<","<=",">=",">"]},"_comparator":{"$ref":"#/definitions/Element"},"unit":{"$ref":"#/definitions/string"},"_unit":{"$ref":"#/definitions/Element"},"system":{"$ref":"#/definitions/uri"},"_system":{"$ref":"#/definitions/Element"},"code":{"$ref":"#/definitions/code"},"_code":{"$ref":"#/definitions/Element"}},"additionalProperties":false};

function validate236(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
for(const key0 in data){
if(!(func2.call(schema38.properties, key0))){
const err0 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err1 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(wrapper0.validate(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? wrapper0.validate.errors : vErrors.concat(wrapper0.validate.errors);
errors = vErrors.length;
}
}
}
else {
const err2 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.value !== undefined){
if(!(validate83(data.value, {instancePath:instancePath+"/value",parentData:data,parentDataProperty:"value",rootData}))){
vErrors = vErrors === null ? validate83.errors : vErrors.concat(validate83.errors);
errors = vErrors.length;
}
}
if(data._value !== undefined){
if(!(validate32(data._value, {instancePath:instancePath+"/_value",parentData:data,parentDataProperty:"_value",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.comparator !== undefined){
let data5 = data.comparator;
if(!((((data5 === "<") || (data5 === "<=")) || (data5 === ">=")) || (data5 === ">"))){
const err3 = {instancePath:instancePath+"/comparator",schemaPath:"#/properties/comparator/enum",keyword:"enum",params:{allowedValues: schema38.properties.comparator.enum}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data._comparator !== undefined){
if(!(validate32(data._comparator, {instancePath:instancePath+"/_comparator",parentData:data,parentDataProperty:"_comparator",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.unit !== undefined){
if(!(validate26(data.unit, {instancePath:instancePath+"/unit",parentData:data,parentDataProperty:"unit",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._unit !== undefined){
if(!(validate32(data._unit, {instancePath:instancePath+"/_unit",parentData:data,parentDataProperty:"_unit",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.system !== undefined){
if(!(validate30(data.system, {instancePath:instancePath+"/system",parentData:data,parentDataProperty:"system",rootData}))){
vErrors = vErrors === null ? validate30.errors : vErrors.concat(validate30.errors);
errors = vErrors.length;
}
}
if(data._system !== undefined){
if(!(validate32(data._system, {instancePath:instancePath+"/_system",parentData:data,parentDataProperty:"_system",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.code !== undefined){
if(!(validate91(data.code, {instancePath:instancePath+"/code",parentData:data,parentDataProperty:"code",rootData}))){
vErrors = vErrors === null ? validate91.errors : vErrors.concat(validate91.errors);
errors = vErrors.length;
}
}
if(data._code !== undefined){
if(!(validate32(data._code, {instancePath:instancePath+"/_code",parentData:data,parentDataProperty:"_code",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
}
else {
const err4 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
validate236.errors = vErrors;
return errors === 0;
}

const schema39 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"low":{"$ref":"#/definitions/Quantity"},"high":{"$ref":"#/definitions/Quantity"}},"additionalProperties":false};

function validate248(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
for(const key0 in data){
if(!((((key0 === "id") || (key0 === "extension")) || (key0 === "low")) || (key0 === "high"))){
const err0 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err1 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(wrapper0.validate(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? wrapper0.validate.errors : vErrors.concat(wrapper0.validate.errors);
errors = vErrors.length;
}
}
}
else {
const err2 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.low !== undefined){
if(!(validate236(data.low, {instancePath:instancePath+"/low",parentData:data,parentDataProperty:"low",rootData}))){
vErrors = vErrors === null ? validate236.errors : vErrors.concat(validate236.errors);
errors = vErrors.length;
}
}
if(data.high !== undefined){
if(!(validate236(data.high, {instancePath:instancePath+"/high",parentData:data,parentDataProperty:"high",rootData}))){
vErrors = vErrors === null ? validate236.errors : vErrors.concat(validate236.errors);
errors = vErrors.length;
}
}
}
else {
const err3 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
validate248.errors = vErrors;
return errors === 0;
}

const schema40 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"numerator":{"$ref":"#/definitions/Quantity"},"denominator":{"$ref":"#/definitions/Quantity"}},"additionalProperties":false};

function validate253(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
for(const key0 in data){
if(!((((key0 === "id") || (key0 === "extension")) || (key0 === "numerator")) || (key0 === "denominator"))){
const err0 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err1 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(wrapper0.validate(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? wrapper0.validate.errors : vErrors.concat(wrapper0.validate.errors);
errors = vErrors.length;
}
}
}
else {
const err2 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.numerator !== undefined){
if(!(validate236(data.numerator, {instancePath:instancePath+"/numerator",parentData:data,parentDataProperty:"numerator",rootData}))){
vErrors = vErrors === null ? validate236.errors : vErrors.concat(validate236.errors);
errors = vErrors.length;
}
}
if(data.denominator !== undefined){
if(!(validate236(data.denominator, {instancePath:instancePath+"/denominator",parentData:data,parentDataProperty:"denominator",rootData}))){
vErrors = vErrors === null ? validate236.errors : vErrors.concat(validate236.errors);
errors = vErrors.length;
}
}
}
else {
const err3 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
validate253.errors = vErrors;
return errors === 0;
}

const schema41 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"origin":{"$ref":"#/definitions/Quantity"},"period":{"$ref":"#/definitions/decimal"},"_period":{"$ref":"#/definitions/Element"},"factor":{"$ref":"#/definitions/decimal"},"_factor":{"$ref":"#/definitions/Element"},"lowerLimit":{"$ref":"#/definitions/decimal"},"_lowerLimit":{"$ref":"#/definitions/Element"},"upperLimit":{"$ref":"#/definitions/decimal"},"_upperLimit":{"$ref":"#/definitions/Element"},"dimensions":{"$ref":"#/definitions/positiveInt"},"_dimensions":{"$ref":"#/definitions/Element"},"data":{"$ref":"#/definitions/string"},"_data":{"$ref":"#/definitions/Element"}},"required":["dimensions","origin","period"],"additionalProperties":false};

function validate259(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.dimensions === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "dimensions"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.origin === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "origin"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(data.period === undefined){
const err2 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "period"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
for(const key0 in data){
if(!(func2.call(schema41.properties, key0))){
const err3 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err4 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(wrapper0.validate(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? wrapper0.validate.errors : vErrors.concat(wrapper0.validate.errors);
errors = vErrors.length;
}
}
}
else {
const err5 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
if(data.origin !== undefined){
if(!(validate236(data.origin, {instancePath:instancePath+"/origin",parentData:data,parentDataProperty:"origin",rootData}))){
vErrors = vErrors === null ? validate236.errors : vErrors.concat(validate236.errors);
errors = vErrors.length;
}
}
if(data.period !== undefined){
if(!(validate83(data.period, {instancePath:instancePath+"/period",parentData:data,parentDataProperty:"period",rootData}))){
vErrors = vErrors === null ? validate83.errors : vErrors.concat(validate83.errors);
errors = vErrors.length;
}
}
if(data._period !== undefined){
if(!(validate32(data._period, {instancePath:instancePath+"/_period",parentData:data,parentDataProperty:"_period",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.factor !== undefined){
if(!(validate83(data.factor, {instancePath:instancePath+"/factor",parentData:data,parentDataProperty:"factor",rootData}))){
vErrors = vErrors === null ? validate83.errors : vErrors.concat(validate83.errors);
errors = vErrors.length;
}
}
if(data._factor !== undefined){
if(!(validate32(data._factor, {instancePath:instancePath+"/_factor",parentData:data,parentDataProperty:"_factor",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.lowerLimit !== undefined){
if(!(validate83(data.lowerLimit, {instancePath:instancePath+"/lowerLimit",parentData:data,parentDataProperty:"lowerLimit",rootData}))){
vErrors = vErrors === null ? validate83.errors : vErrors.concat(validate83.errors);
errors = vErrors.length;
}
}
if(data._lowerLimit !== undefined){
if(!(validate32(data._lowerLimit, {instancePath:instancePath+"/_lowerLimit",parentData:data,parentDataProperty:"_lowerLimit",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.upperLimit !== undefined){
if(!(validate83(data.upperLimit, {instancePath:instancePath+"/upperLimit",parentData:data,parentDataProperty:"upperLimit",rootData}))){
vErrors = vErrors === null ? validate83.errors : vErrors.concat(validate83.errors);
errors = vErrors.length;
}
}
if(data._upperLimit !== undefined){
if(!(validate32(data._upperLimit, {instancePath:instancePath+"/_upperLimit",parentData:data,parentDataProperty:"_upperLimit",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.dimensions !== undefined){
if(!(validate171(data.dimensions, {instancePath:instancePath+"/dimensions",parentData:data,parentDataProperty:"dimensions",rootData}))){
vErrors = vErrors === null ? validate171.errors : vErrors.concat(validate171.errors);
errors = vErrors.length;
}
}
if(data._dimensions !== undefined){
if(!(validate32(data._dimensions, {instancePath:instancePath+"/_dimensions",parentData:data,parentDataProperty:"_dimensions",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.data !== undefined){
if(!(validate26(data.data, {instancePath:instancePath+"/data",parentData:data,parentDataProperty:"data",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._data !== undefined){
if(!(validate32(data._data, {instancePath:instancePath+"/_data",parentData:data,parentDataProperty:"_data",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
}
else {
const err6 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
validate259.errors = vErrors;
return errors === 0;
}

const schema42 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"type":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Coding"}},"when":{"$ref":"#/definitions/instant"},"_when":{"$ref":"#/definitions/Element"},"who":{"$ref":"#/definitions/Reference"},"onBehalfOf":{"$ref":"#/definitions/Reference"},"targetFormat":{"$ref":"#/definitions/code"},"_targetFormat":{"$ref":"#/definitions/Element"},"sigFormat":{"$ref":"#/definitions/code"},"_sigFormat":{"$ref":"#/definitions/Element"},"data":{"$ref":"#/definitions/base64Binary"},"_data":{"$ref":"#/definitions/Element"}},"required":["type","when","who"],"additionalProperties":false};
const schema43 = {"type":"string","pattern":"^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)-(0[1-9]|1[0-2])-(0[1-9]|[1-2][0-9]|3[0-1])T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00))$"};
const pattern9 = new RegExp("^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)-(0[1-9]|1[0-2])-(0[1-9]|[1-2][0-9]|3[0-1])T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00))$", "u");

function validate278(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(typeof data === "string"){
if(!pattern9.test(data)){
const err0 = {instancePath,schemaPath:"#/pattern",keyword:"pattern",params:{pattern: "^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)-(0[1-9]|1[0-2])-(0[1-9]|[1-2][0-9]|3[0-1])T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00))$"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
else {
const err1 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
validate278.errors = vErrors;
return errors === 0;
}


function validate275(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.type === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "type"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.when === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "when"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(data.who === undefined){
const err2 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "who"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
for(const key0 in data){
if(!(func2.call(schema42.properties, key0))){
const err3 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err4 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(wrapper0.validate(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? wrapper0.validate.errors : vErrors.concat(wrapper0.validate.errors);
errors = vErrors.length;
}
}
}
else {
const err5 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
if(data.type !== undefined){
let data3 = data.type;
if(Array.isArray(data3)){
if(data3.length < 1){
const err6 = {instancePath:instancePath+"/type",schemaPath:"#/properties/type/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
const len1 = data3.length;
for(let i1=0; i1<len1; i1++){
if(!(validate108(data3[i1], {instancePath:instancePath+"/type/" + i1,parentData:data3,parentDataProperty:i1,rootData}))){
vErrors = vErrors === null ? validate108.errors : vErrors.concat(validate108.errors);
errors = vErrors.length;
}
}
}
else {
const err7 = {instancePath:instancePath+"/type",schemaPath:"#/properties/type/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
}
if(data.when !== undefined){
if(!(validate278(data.when, {instancePath:instancePath+"/when",parentData:data,parentDataProperty:"when",rootData}))){
vErrors = vErrors === null ? validate278.errors : vErrors.concat(validate278.errors);
errors = vErrors.length;
}
}
if(data._when !== undefined){
if(!(validate32(data._when, {instancePath:instancePath+"/_when",parentData:data,parentDataProperty:"_when",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.who !== undefined){
if(!(validate97(data.who, {instancePath:instancePath+"/who",parentData:data,parentDataProperty:"who",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
if(data.onBehalfOf !== undefined){
if(!(validate97(data.onBehalfOf, {instancePath:instancePath+"/onBehalfOf",parentData:data,parentDataProperty:"onBehalfOf",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
if(data.targetFormat !== undefined){
if(!(validate91(data.targetFormat, {instancePath:instancePath+"/targetFormat",parentData:data,parentDataProperty:"targetFormat",rootData}))){
vErrors = vErrors === null ? validate91.errors : vErrors.concat(validate91.errors);
errors = vErrors.length;
}
}
if(data._targetFormat !== undefined){
if(!(validate32(data._targetFormat, {instancePath:instancePath+"/_targetFormat",parentData:data,parentDataProperty:"_targetFormat",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.sigFormat !== undefined){
if(!(validate91(data.sigFormat, {instancePath:instancePath+"/sigFormat",parentData:data,parentDataProperty:"sigFormat",rootData}))){
vErrors = vErrors === null ? validate91.errors : vErrors.concat(validate91.errors);
errors = vErrors.length;
}
}
if(data._sigFormat !== undefined){
if(!(validate32(data._sigFormat, {instancePath:instancePath+"/_sigFormat",parentData:data,parentDataProperty:"_sigFormat",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.data !== undefined){
if(!(validate147(data.data, {instancePath:instancePath+"/data",parentData:data,parentDataProperty:"data",rootData}))){
vErrors = vErrors === null ? validate147.errors : vErrors.concat(validate147.errors);
errors = vErrors.length;
}
}
if(data._data !== undefined){
if(!(validate32(data._data, {instancePath:instancePath+"/_data",parentData:data,parentDataProperty:"_data",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
}
else {
const err8 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
validate275.errors = vErrors;
return errors === 0;
}

const schema44 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"event":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/dateTime"}},"_event":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Element"}},"repeat":{"$ref":"#/definitions/Timing_Repeat"},"code":{"$ref":"#/definitions/CodeableConcept"}},"additionalProperties":false};
const schema45 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"boundsDuration":{"$ref":"#/definitions/Duration"},"boundsRange":{"$ref":"#/definitions/Range"},"boundsPeriod":{"$ref":"#/definitions/Period"},"count":{"$ref":"#/definitions/positiveInt"},"_count":{"$ref":"#/definitions/Element"},"countMax":{"$ref":"#/definitions/positiveInt"},"_countMax":{"$ref":"#/definitions/Element"},"duration":{"$ref":"#/definitions/decimal"},"_duration":{"$ref":"#/definitions/Element"},"durationMax":{"$ref":"#/definitions/decimal"},"_durationMax":{"$ref":"#/definitions/Element"},"durationUnit":{"enum":["s","min","h","d","wk","mo","a"]},"_durationUnit":{"$ref":"#/definitions/Element"},"frequency":{"$ref":"#/definitions/positiveInt"},"_frequency":{"$ref":"#/definitions/Element"},"frequencyMax":{"$ref":"#/definitions/positiveInt"},"_frequencyMax":{"$ref":"#/definitions/Element"},"period":{"$ref":"#/definitions/decimal"},"_period":{"$ref":"#/definitions/Element"},"periodMax":{"$ref":"#/definitions/decimal"},"_periodMax":{"$ref":"#/definitions/Element"},"periodUnit":{"enum":["s","min","h","d","wk","mo","a"]},"_periodUnit":{"$ref":"#/definitions/Element"},"dayOfWeek":{"type":"array","minItems":1,"items":{"enum":["mon","tue","wed","thu","fri","sat","sun"]}},"_dayOfWeek":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Element"}},"timeOfDay":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/time"}},"_timeOfDay":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Element"}},"when":{"type":"array","minItems":1,"items":{"enum":["MORN","MORN.early","MORN.late","NOON","AFT","AFT.early","AFT.late","EVE","EVE.early","EVE.late","NIGHT","PHS","HS","WAKE","C","CM","CD","CV","AC","ACM","ACD","ACV","PC","PCM","PCD","PCV"]}},"_when":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Element"}},"offset":{"$ref":"#/definitions/unsignedInt"},"_offset":{"$ref":"#/definitions/Element"}},"choices":[{"element":"bounds[x]","properties":["boundsDuration","boundsRange","boundsPeriod"],"required":false}],"additionalProperties":false};
const schema46 = {"type":"string","pattern":"^([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?$"};
const pattern13 = new RegExp("^([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?$", "u");

function validate318(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(typeof data === "string"){
if(!pattern13.test(data)){
const err0 = {instancePath,schemaPath:"#/pattern",keyword:"pattern",params:{pattern: "^([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?$"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
else {
const err1 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
validate318.errors = vErrors;
return errors === 0;
}


function validate294(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
for(const key0 in data){
if(!(func2.call(schema45.properties, key0))){
const err0 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err1 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(wrapper0.validate(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? wrapper0.validate.errors : vErrors.concat(wrapper0.validate.errors);
errors = vErrors.length;
}
}
}
else {
const err2 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.boundsDuration !== undefined){
if(!(validate200(data.boundsDuration, {instancePath:instancePath+"/boundsDuration",parentData:data,parentDataProperty:"boundsDuration",rootData}))){
vErrors = vErrors === null ? validate200.errors : vErrors.concat(validate200.errors);
errors = vErrors.length;
}
}
if(data.boundsRange !== undefined){
if(!(validate248(data.boundsRange, {instancePath:instancePath+"/boundsRange",parentData:data,parentDataProperty:"boundsRange",rootData}))){
vErrors = vErrors === null ? validate248.errors : vErrors.concat(validate248.errors);
errors = vErrors.length;
}
}
if(data.boundsPeriod !== undefined){
if(!(validate72(data.boundsPeriod, {instancePath:instancePath+"/boundsPeriod",parentData:data,parentDataProperty:"boundsPeriod",rootData}))){
vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
errors = vErrors.length;
}
}
if(data.count !== undefined){
if(!(validate171(data.count, {instancePath:instancePath+"/count",parentData:data,parentDataProperty:"count",rootData}))){
vErrors = vErrors === null ? validate171.errors : vErrors.concat(validate171.errors);
errors = vErrors.length;
}
}
if(data._count !== undefined){
if(!(validate32(data._count, {instancePath:instancePath+"/_count",parentData:data,parentDataProperty:"_count",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.countMax !== undefined){
if(!(validate171(data.countMax, {instancePath:instancePath+"/countMax",parentData:data,parentDataProperty:"countMax",rootData}))){
vErrors = vErrors === null ? validate171.errors : vErrors.concat(validate171.errors);
errors = vErrors.length;
}
}
if(data._countMax !== undefined){
if(!(validate32(data._countMax, {instancePath:instancePath+"/_countMax",parentData:data,parentDataProperty:"_countMax",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.duration !== undefined){
if(!(validate83(data.duration, {instancePath:instancePath+"/duration",parentData:data,parentDataProperty:"duration",rootData}))){
vErrors = vErrors === null ? validate83.errors : vErrors.concat(validate83.errors);
errors = vErrors.length;
}
}
if(data._duration !== undefined){
if(!(validate32(data._duration, {instancePath:instancePath+"/_duration",parentData:data,parentDataProperty:"_duration",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.durationMax !== undefined){
if(!(validate83(data.durationMax, {instancePath:instancePath+"/durationMax",parentData:data,parentDataProperty:"durationMax",rootData}))){
vErrors = vErrors === null ? validate83.errors : vErrors.concat(validate83.errors);
errors = vErrors.length;
}
}
if(data._durationMax !== undefined){
if(!(validate32(data._durationMax, {instancePath:instancePath+"/_durationMax",parentData:data,parentDataProperty:"_durationMax",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.durationUnit !== undefined){
let data14 = data.durationUnit;
if(!(((((((data14 === "s") || (data14 === "min")) || (data14 === "h")) || (data14 === "d")) || (data14 === "wk")) || (data14 === "mo")) || (data14 === "a"))){
const err3 = {instancePath:instancePath+"/durationUnit",schemaPath:"#/properties/durationUnit/enum",keyword:"enum",params:{allowedValues: schema45.properties.durationUnit.enum}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data._durationUnit !== undefined){
if(!(validate32(data._durationUnit, {instancePath:instancePath+"/_durationUnit",parentData:data,parentDataProperty:"_durationUnit",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.frequency !== undefined){
if(!(validate171(data.frequency, {instancePath:instancePath+"/frequency",parentData:data,parentDataProperty:"frequency",rootData}))){
vErrors = vErrors === null ? validate171.errors : vErrors.concat(validate171.errors);
errors = vErrors.length;
}
}
if(data._frequency !== undefined){
if(!(validate32(data._frequency, {instancePath:instancePath+"/_frequency",parentData:data,parentDataProperty:"_frequency",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.frequencyMax !== undefined){
if(!(validate171(data.frequencyMax, {instancePath:instancePath+"/frequencyMax",parentData:data,parentDataProperty:"frequencyMax",rootData}))){
vErrors = vErrors === null ? validate171.errors : vErrors.concat(validate171.errors);
errors = vErrors.length;
}
}
if(data._frequencyMax !== undefined){
if(!(validate32(data._frequencyMax, {instancePath:instancePath+"/_frequencyMax",parentData:data,parentDataProperty:"_frequencyMax",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.period !== undefined){
if(!(validate83(data.period, {instancePath:instancePath+"/period",parentData:data,parentDataProperty:"period",rootData}))){
vErrors = vErrors === null ? validate83.errors : vErrors.concat(validate83.errors);
errors = vErrors.length;
}
}
if(data._period !== undefined){
if(!(validate32(data._period, {instancePath:instancePath+"/_period",parentData:data,parentDataProperty:"_period",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.periodMax !== undefined){
if(!(validate83(data.periodMax, {instancePath:instancePath+"/periodMax",parentData:data,parentDataProperty:"periodMax",rootData}))){
vErrors = vErrors === null ? validate83.errors : vErrors.concat(validate83.errors);
errors = vErrors.length;
}
}
if(data._periodMax !== undefined){
if(!(validate32(data._periodMax, {instancePath:instancePath+"/_periodMax",parentData:data,parentDataProperty:"_periodMax",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.periodUnit !== undefined){
let data24 = data.periodUnit;
if(!(((((((data24 === "s") || (data24 === "min")) || (data24 === "h")) || (data24 === "d")) || (data24 === "wk")) || (data24 === "mo")) || (data24 === "a"))){
const err4 = {instancePath:instancePath+"/periodUnit",schemaPath:"#/properties/periodUnit/enum",keyword:"enum",params:{allowedValues: schema45.properties.periodUnit.enum}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data._periodUnit !== undefined){
if(!(validate32(data._periodUnit, {instancePath:instancePath+"/_periodUnit",parentData:data,parentDataProperty:"_periodUnit",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.dayOfWeek !== undefined){
let data26 = data.dayOfWeek;
if(Array.isArray(data26)){
if(data26.length < 1){
const err5 = {instancePath:instancePath+"/dayOfWeek",schemaPath:"#/properties/dayOfWeek/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
const len1 = data26.length;
for(let i1=0; i1<len1; i1++){
let data27 = data26[i1];
if(!(((((((data27 === "mon") || (data27 === "tue")) || (data27 === "wed")) || (data27 === "thu")) || (data27 === "fri")) || (data27 === "sat")) || (data27 === "sun"))){
const err6 = {instancePath:instancePath+"/dayOfWeek/" + i1,schemaPath:"#/properties/dayOfWeek/items/enum",keyword:"enum",params:{allowedValues: schema45.properties.dayOfWeek.items.enum}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
}
else {
const err7 = {instancePath:instancePath+"/dayOfWeek",schemaPath:"#/properties/dayOfWeek/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
}
if(data._dayOfWeek !== undefined){
let data28 = data._dayOfWeek;
if(Array.isArray(data28)){
if(data28.length < 1){
const err8 = {instancePath:instancePath+"/_dayOfWeek",schemaPath:"#/properties/_dayOfWeek/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
const len2 = data28.length;
for(let i2=0; i2<len2; i2++){
if(!(validate32(data28[i2], {instancePath:instancePath+"/_dayOfWeek/" + i2,parentData:data28,parentDataProperty:i2,rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
}
else {
const err9 = {instancePath:instancePath+"/_dayOfWeek",schemaPath:"#/properties/_dayOfWeek/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
}
if(data.timeOfDay !== undefined){
let data30 = data.timeOfDay;
if(Array.isArray(data30)){
if(data30.length < 1){
const err10 = {instancePath:instancePath+"/timeOfDay",schemaPath:"#/properties/timeOfDay/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err10];
}
else {
vErrors.push(err10);
}
errors++;
}
const len3 = data30.length;
for(let i3=0; i3<len3; i3++){
if(!(validate318(data30[i3], {instancePath:instancePath+"/timeOfDay/" + i3,parentData:data30,parentDataProperty:i3,rootData}))){
vErrors = vErrors === null ? validate318.errors : vErrors.concat(validate318.errors);
errors = vErrors.length;
}
}
}
else {
const err11 = {instancePath:instancePath+"/timeOfDay",schemaPath:"#/properties/timeOfDay/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err11];
}
else {
vErrors.push(err11);
}
errors++;
}
}
if(data._timeOfDay !== undefined){
let data32 = data._timeOfDay;
if(Array.isArray(data32)){
if(data32.length < 1){
const err12 = {instancePath:instancePath+"/_timeOfDay",schemaPath:"#/properties/_timeOfDay/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err12];
}
else {
vErrors.push(err12);
}
errors++;
}
const len4 = data32.length;
for(let i4=0; i4<len4; i4++){
if(!(validate32(data32[i4], {instancePath:instancePath+"/_timeOfDay/" + i4,parentData:data32,parentDataProperty:i4,rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
}
else {
const err13 = {instancePath:instancePath+"/_timeOfDay",schemaPath:"#/properties/_timeOfDay/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err13];
}
else {
vErrors.push(err13);
}
errors++;
}
}
if(data.when !== undefined){
let data34 = data.when;
if(Array.isArray(data34)){
if(data34.length < 1){
const err14 = {instancePath:instancePath+"/when",schemaPath:"#/properties/when/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err14];
}
else {
vErrors.push(err14);
}
errors++;
}
const len5 = data34.length;
for(let i5=0; i5<len5; i5++){
let data35 = data34[i5];
if(!((((((((((((((((((((((((((data35 === "MORN") || (data35 === "MORN.early")) || (data35 === "MORN.late")) || (data35 === "NOON")) || (data35 === "AFT")) || (data35 === "AFT.early")) || (data35 === "AFT.late")) || (data35 === "EVE")) || (data35 === "EVE.early")) || (data35 === "EVE.late")) || (data35 === "NIGHT")) || (data35 === "PHS")) || (data35 === "HS")) || (data35 === "WAKE")) || (data35 === "C")) || (data35 === "CM")) || (data35 === "CD")) || (data35 === "CV")) || (data35 === "AC")) || (data35 === "ACM")) || (data35 === "ACD")) || (data35 === "ACV")) || (data35 === "PC")) || (data35 === "PCM")) || (data35 === "PCD")) || (data35 === "PCV"))){
const err15 = {instancePath:instancePath+"/when/" + i5,schemaPath:"#/properties/when/items/enum",keyword:"enum",params:{allowedValues: schema45.properties.when.items.enum}};
if(vErrors === null){
vErrors = [err15];
}
else {
vErrors.push(err15);
}
errors++;
}
}
}
else {
const err16 = {instancePath:instancePath+"/when",schemaPath:"#/properties/when/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err16];
}
else {
vErrors.push(err16);
}
errors++;
}
}
if(data._when !== undefined){
let data36 = data._when;
if(Array.isArray(data36)){
if(data36.length < 1){
const err17 = {instancePath:instancePath+"/_when",schemaPath:"#/properties/_when/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err17];
}
else {
vErrors.push(err17);
}
errors++;
}
const len6 = data36.length;
for(let i6=0; i6<len6; i6++){
if(!(validate32(data36[i6], {instancePath:instancePath+"/_when/" + i6,parentData:data36,parentDataProperty:i6,rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
}
else {
const err18 = {instancePath:instancePath+"/_when",schemaPath:"#/properties/_when/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err18];
}
else {
vErrors.push(err18);
}
errors++;
}
}
if(data.offset !== undefined){
if(!(validate153(data.offset, {instancePath:instancePath+"/offset",parentData:data,parentDataProperty:"offset",rootData}))){
vErrors = vErrors === null ? validate153.errors : vErrors.concat(validate153.errors);
errors = vErrors.length;
}
}
if(data._offset !== undefined){
if(!(validate32(data._offset, {instancePath:instancePath+"/_offset",parentData:data,parentDataProperty:"_offset",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
let count0 = 0;
if(data["boundsDuration"] !== undefined){
count0++;
}
if(data["boundsRange"] !== undefined){
count0++;
}
if(data["boundsPeriod"] !== undefined){
count0++;
}
if(count0 > 1){
const err19 = {instancePath,schemaPath:"#/choices",keyword:"choices",params:{}};
if(vErrors === null){
vErrors = [err19];
}
else {
vErrors.push(err19);
}
errors++;
}
}
else {
const err20 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err20];
}
else {
vErrors.push(err20);
}
errors++;
}
validate294.errors = vErrors;
return errors === 0;
}


function validate290(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
for(const key0 in data){
if(!(((((((key0 === "id") || (key0 === "extension")) || (key0 === "modifierExtension")) || (key0 === "event")) || (key0 === "_event")) || (key0 === "repeat")) || (key0 === "code"))){
const err0 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err1 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(wrapper0.validate(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? wrapper0.validate.errors : vErrors.concat(wrapper0.validate.errors);
errors = vErrors.length;
}
}
}
else {
const err2 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.modifierExtension !== undefined){
let data3 = data.modifierExtension;
if(Array.isArray(data3)){
if(data3.length < 1){
const err3 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
const len1 = data3.length;
for(let i1=0; i1<len1; i1++){
if(!(wrapper0.validate(data3[i1], {instancePath:instancePath+"/modifierExtension/" + i1,parentData:data3,parentDataProperty:i1,rootData}))){
vErrors = vErrors === null ? wrapper0.validate.errors : vErrors.concat(wrapper0.validate.errors);
errors = vErrors.length;
}
}
}
else {
const err4 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.event !== undefined){
let data5 = data.event;
if(Array.isArray(data5)){
if(data5.length < 1){
const err5 = {instancePath:instancePath+"/event",schemaPath:"#/properties/event/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
const len2 = data5.length;
for(let i2=0; i2<len2; i2++){
if(!(validate74(data5[i2], {instancePath:instancePath+"/event/" + i2,parentData:data5,parentDataProperty:i2,rootData}))){
vErrors = vErrors === null ? validate74.errors : vErrors.concat(validate74.errors);
errors = vErrors.length;
}
}
}
else {
const err6 = {instancePath:instancePath+"/event",schemaPath:"#/properties/event/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
if(data._event !== undefined){
let data7 = data._event;
if(Array.isArray(data7)){
if(data7.length < 1){
const err7 = {instancePath:instancePath+"/_event",schemaPath:"#/properties/_event/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
const len3 = data7.length;
for(let i3=0; i3<len3; i3++){
if(!(validate32(data7[i3], {instancePath:instancePath+"/_event/" + i3,parentData:data7,parentDataProperty:i3,rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
}
else {
const err8 = {instancePath:instancePath+"/_event",schemaPath:"#/properties/_event/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
}
if(data.repeat !== undefined){
if(!(validate294(data.repeat, {instancePath:instancePath+"/repeat",parentData:data,parentDataProperty:"repeat",rootData}))){
vErrors = vErrors === null ? validate294.errors : vErrors.concat(validate294.errors);
errors = vErrors.length;
}
}
if(data.code !== undefined){
if(!(validate106(data.code, {instancePath:instancePath+"/code",parentData:data,parentDataProperty:"code",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
}
else {
const err9 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
validate290.errors = vErrors;
return errors === 0;
}

const schema47 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"name":{"$ref":"#/definitions/string"},"_name":{"$ref":"#/definitions/Element"},"telecom":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/ContactPoint"}}},"additionalProperties":false};

function validate327(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
for(const key0 in data){
if(!(((((key0 === "id") || (key0 === "extension")) || (key0 === "name")) || (key0 === "_name")) || (key0 === "telecom"))){
const err0 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err1 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(wrapper0.validate(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? wrapper0.validate.errors : vErrors.concat(wrapper0.validate.errors);
errors = vErrors.length;
}
}
}
else {
const err2 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.name !== undefined){
if(!(validate26(data.name, {instancePath:instancePath+"/name",parentData:data,parentDataProperty:"name",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._name !== undefined){
if(!(validate32(data._name, {instancePath:instancePath+"/_name",parentData:data,parentDataProperty:"_name",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.telecom !== undefined){
let data5 = data.telecom;
if(Array.isArray(data5)){
if(data5.length < 1){
const err3 = {instancePath:instancePath+"/telecom",schemaPath:"#/properties/telecom/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
const len1 = data5.length;
for(let i1=0; i1<len1; i1++){
if(!(validate165(data5[i1], {instancePath:instancePath+"/telecom/" + i1,parentData:data5,parentDataProperty:i1,rootData}))){
vErrors = vErrors === null ? validate165.errors : vErrors.concat(validate165.errors);
errors = vErrors.length;
}
}
}
else {
const err4 = {instancePath:instancePath+"/telecom",schemaPath:"#/properties/telecom/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
}
else {
const err5 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
validate327.errors = vErrors;
return errors === 0;
}

const schema48 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"type":{"enum":["author","editor","reviewer","endorser"]},"_type":{"$ref":"#/definitions/Element"},"name":{"$ref":"#/definitions/string"},"_name":{"$ref":"#/definitions/Element"},"contact":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/ContactDetail"}}},"required":["name","type"],"additionalProperties":false};

function validate333(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.name === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "name"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.type === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "type"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
for(const key0 in data){
if(!(((((((key0 === "id") || (key0 === "extension")) || (key0 === "type")) || (key0 === "_type")) || (key0 === "name")) || (key0 === "_name")) || (key0 === "contact"))){
const err2 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err3 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(wrapper0.validate(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? wrapper0.validate.errors : vErrors.concat(wrapper0.validate.errors);
errors = vErrors.length;
}
}
}
else {
const err4 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.type !== undefined){
let data3 = data.type;
if(!((((data3 === "author") || (data3 === "editor")) || (data3 === "reviewer")) || (data3 === "endorser"))){
const err5 = {instancePath:instancePath+"/type",schemaPath:"#/properties/type/enum",keyword:"enum",params:{allowedValues: schema48.properties.type.enum}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
if(data._type !== undefined){
if(!(validate32(data._type, {instancePath:instancePath+"/_type",parentData:data,parentDataProperty:"_type",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.name !== undefined){
if(!(validate26(data.name, {instancePath:instancePath+"/name",parentData:data,parentDataProperty:"name",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._name !== undefined){
if(!(validate32(data._name, {instancePath:instancePath+"/_name",parentData:data,parentDataProperty:"_name",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.contact !== undefined){
let data7 = data.contact;
if(Array.isArray(data7)){
if(data7.length < 1){
const err6 = {instancePath:instancePath+"/contact",schemaPath:"#/properties/contact/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
const len1 = data7.length;
for(let i1=0; i1<len1; i1++){
if(!(validate327(data7[i1], {instancePath:instancePath+"/contact/" + i1,parentData:data7,parentDataProperty:i1,rootData}))){
vErrors = vErrors === null ? validate327.errors : vErrors.concat(validate327.errors);
errors = vErrors.length;
}
}
}
else {
const err7 = {instancePath:instancePath+"/contact",schemaPath:"#/properties/contact/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
}
}
else {
const err8 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
validate333.errors = vErrors;
return errors === 0;
}

const schema49 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"type":{"enum":["Address","Age","Annotation","Attachment","BackboneElement","CodeableConcept","Coding","ContactDetail","ContactPoint","Contributor","Count","DataRequirement","Distance","Dosage","Duration","Element","ElementDefinition","Expression","Extension","HumanName","Identifier","MarketingStatus","Meta","Money","MoneyQuantity","Narrative","ParameterDefinition","Period","Population","ProdCharacteristic","ProductShelfLife","Quantity","Range","Ratio","Reference","RelatedArtifact","SampledData","Signature","SimpleQuantity","SubstanceAmount","Timing","TriggerDefinition","UsageContext","base64Binary","boolean","canonical","code","date","dateTime","decimal","id","instant","integer","markdown","oid","positiveInt","string","time","unsignedInt","uri","url","uuid","xhtml","Account","ActivityDefinition","AdverseEvent","AllergyIntolerance","Appointment","AppointmentResponse","AuditEvent","Basic","Binary","BiologicallyDerivedProduct","BodyStructure","Bundle","CapabilityStatement","CarePlan","CareTeam","CatalogEntry","ChargeItem","ChargeItemDefinition","Claim","ClaimResponse","ClinicalImpression","CodeSystem","Communication","CommunicationRequest","CompartmentDefinition","Composition","ConceptMap","Condition","Consent","Contract","Coverage","CoverageEligibilityRequest","CoverageEligibilityResponse","DetectedIssue","Device","DeviceDefinition","DeviceMetric","DeviceRequest","DeviceUseStatement","DiagnosticReport","DocumentManifest","DocumentReference","DomainResource","EffectEvidenceSynthesis","Encounter","Endpoint","EnrollmentRequest","EnrollmentResponse","EpisodeOfCare","EventDefinition","Evidence","EvidenceVariable","ExampleScenario","ExplanationOfBenefit","FamilyMemberHistory","Flag","Goal","GraphDefinition","Group","GuidanceResponse","HealthcareService","ImagingStudy","Immunization","ImmunizationEvaluation","ImmunizationRecommendation","ImplementationGuide","InsurancePlan","Invoice","Library","Linkage","List","Location","Measure","MeasureReport","Media","Medication","MedicationAdministration","MedicationDispense","MedicationKnowledge","MedicationRequest","MedicationStatement","MedicinalProduct","MedicinalProductAuthorization","MedicinalProductContraindication","MedicinalProductIndication","MedicinalProductIngredient","MedicinalProductInteraction","MedicinalProductManufactured","MedicinalProductPackaged","MedicinalProductPharmaceutical","MedicinalProductUndesirableEffect","MessageDefinition","MessageHeader","MolecularSequence","NamingSystem","NutritionOrder","Observation","ObservationDefinition","OperationDefinition","OperationOutcome","Organization","OrganizationAffiliation","Parameters","Patient","PaymentNotice","PaymentReconciliation","Person","PlanDefinition","Practitioner","PractitionerRole","Procedure","Provenance","Questionnaire","QuestionnaireResponse","RelatedPerson","RequestGroup","ResearchDefinition","ResearchElementDefinition","ResearchStudy","ResearchSubject","Resource","RiskAssessment","RiskEvidenceSynthesis","Schedule","SearchParameter","ServiceRequest","Slot","Specimen","SpecimenDefinition","StructureDefinition","StructureMap","Subscription","Substance","SubstanceNucleicAcid","SubstancePolymer","SubstanceProtein","SubstanceReferenceInformation","SubstanceSourceMaterial","SubstanceSpecification","SupplyDelivery","SupplyRequest","Task","TerminologyCapabilities","TestReport","TestScript","ValueSet","VerificationResult","VisionPrescription","Type","Any"]},"_type":{"$ref":"#/definitions/Element"},"profile":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/canonical"}},"subjectCodeableConcept":{"$ref":"#/definitions/CodeableConcept"},"subjectReference":{"$ref":"#/definitions/Reference"},"mustSupport":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/string"}},"_mustSupport":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Element"}},"codeFilter":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/DataRequirement_CodeFilter"}},"dateFilter":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/DataRequirement_DateFilter"}},"limit":{"$ref":"#/definitions/positiveInt"},"_limit":{"$ref":"#/definitions/Element"},"sort":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/DataRequirement_Sort"}}},"required":["type"],"choices":[{"element":"subject[x]","properties":["subjectCodeableConcept","subjectReference"],"required":false}],"additionalProperties":false};
const schema50 = {"type":"string","pattern":"^\\S*$"};

function validate343(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(typeof data === "string"){
if(!pattern2.test(data)){
const err0 = {instancePath,schemaPath:"#/pattern",keyword:"pattern",params:{pattern: "^\\S*$"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
else {
const err1 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
validate343.errors = vErrors;
return errors === 0;
}

const schema51 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"path":{"$ref":"#/definitions/string"},"_path":{"$ref":"#/definitions/Element"},"searchParam":{"$ref":"#/definitions/string"},"_searchParam":{"$ref":"#/definitions/Element"},"valueSet":{"$ref":"#/definitions/canonical"},"code":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Coding"}}},"additionalProperties":false};

function validate349(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
for(const key0 in data){
if(!((((((((key0 === "id") || (key0 === "extension")) || (key0 === "path")) || (key0 === "_path")) || (key0 === "searchParam")) || (key0 === "_searchParam")) || (key0 === "valueSet")) || (key0 === "code"))){
const err0 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err1 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(wrapper0.validate(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? wrapper0.validate.errors : vErrors.concat(wrapper0.validate.errors);
errors = vErrors.length;
}
}
}
else {
const err2 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.path !== undefined){
if(!(validate26(data.path, {instancePath:instancePath+"/path",parentData:data,parentDataProperty:"path",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._path !== undefined){
if(!(validate32(data._path, {instancePath:instancePath+"/_path",parentData:data,parentDataProperty:"_path",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.searchParam !== undefined){
if(!(validate26(data.searchParam, {instancePath:instancePath+"/searchParam",parentData:data,parentDataProperty:"searchParam",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._searchParam !== undefined){
if(!(validate32(data._searchParam, {instancePath:instancePath+"/_searchParam",parentData:data,parentDataProperty:"_searchParam",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueSet !== undefined){
if(!(validate343(data.valueSet, {instancePath:instancePath+"/valueSet",parentData:data,parentDataProperty:"valueSet",rootData}))){
vErrors = vErrors === null ? validate343.errors : vErrors.concat(validate343.errors);
errors = vErrors.length;
}
}
if(data.code !== undefined){
let data8 = data.code;
if(Array.isArray(data8)){
if(data8.length < 1){
const err3 = {instancePath:instancePath+"/code",schemaPath:"#/properties/code/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
const len1 = data8.length;
for(let i1=0; i1<len1; i1++){
if(!(validate108(data8[i1], {instancePath:instancePath+"/code/" + i1,parentData:data8,parentDataProperty:i1,rootData}))){
vErrors = vErrors === null ? validate108.errors : vErrors.concat(validate108.errors);
errors = vErrors.length;
}
}
}
else {
const err4 = {instancePath:instancePath+"/code",schemaPath:"#/properties/code/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
}
else {
const err5 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
validate349.errors = vErrors;
return errors === 0;
}

const schema52 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"path":{"$ref":"#/definitions/string"},"_path":{"$ref":"#/definitions/Element"},"searchParam":{"$ref":"#/definitions/string"},"_searchParam":{"$ref":"#/definitions/Element"},"valueDateTime":{"type":"string","pattern":"^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1])(T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00)))?)?)?$"},"_valueDateTime":{"$ref":"#/definitions/Element"},"valuePeriod":{"$ref":"#/definitions/Period"},"valueDuration":{"$ref":"#/definitions/Duration"}},"choices":[{"element":"value[x]","properties":["valueDateTime","valuePeriod","valueDuration"],"required":false}],"additionalProperties":false};

function validate358(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
for(const key0 in data){
if(!(func2.call(schema52.properties, key0))){
const err0 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err1 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(wrapper0.validate(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? wrapper0.validate.errors : vErrors.concat(wrapper0.validate.errors);
errors = vErrors.length;
}
}
}
else {
const err2 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.path !== undefined){
if(!(validate26(data.path, {instancePath:instancePath+"/path",parentData:data,parentDataProperty:"path",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._path !== undefined){
if(!(validate32(data._path, {instancePath:instancePath+"/_path",parentData:data,parentDataProperty:"_path",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.searchParam !== undefined){
if(!(validate26(data.searchParam, {instancePath:instancePath+"/searchParam",parentData:data,parentDataProperty:"searchParam",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._searchParam !== undefined){
if(!(validate32(data._searchParam, {instancePath:instancePath+"/_searchParam",parentData:data,parentDataProperty:"_searchParam",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueDateTime !== undefined){
let data7 = data.valueDateTime;
if(typeof data7 === "string"){
if(!pattern7.test(data7)){
const err3 = {instancePath:instancePath+"/valueDateTime",schemaPath:"#/properties/valueDateTime/pattern",keyword:"pattern",params:{pattern: "^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1])(T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00)))?)?)?$"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
else {
const err4 = {instancePath:instancePath+"/valueDateTime",schemaPath:"#/properties/valueDateTime/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data._valueDateTime !== undefined){
if(!(validate32(data._valueDateTime, {instancePath:instancePath+"/_valueDateTime",parentData:data,parentDataProperty:"_valueDateTime",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valuePeriod !== undefined){
if(!(validate72(data.valuePeriod, {instancePath:instancePath+"/valuePeriod",parentData:data,parentDataProperty:"valuePeriod",rootData}))){
vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
errors = vErrors.length;
}
}
if(data.valueDuration !== undefined){
if(!(validate200(data.valueDuration, {instancePath:instancePath+"/valueDuration",parentData:data,parentDataProperty:"valueDuration",rootData}))){
vErrors = vErrors === null ? validate200.errors : vErrors.concat(validate200.errors);
errors = vErrors.length;
}
}
let count0 = 0;
if(data["valueDateTime"] !== undefined){
count0++;
}
if(data["valuePeriod"] !== undefined){
count0++;
}
if(data["valueDuration"] !== undefined){
count0++;
}
if(count0 > 1){
const err5 = {instancePath,schemaPath:"#/choices",keyword:"choices",params:{}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
else {
const err6 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
validate358.errors = vErrors;
return errors === 0;
}

const schema53 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"path":{"$ref":"#/definitions/string"},"_path":{"$ref":"#/definitions/Element"},"direction":{"enum":["ascending","descending"]},"_direction":{"$ref":"#/definitions/Element"}},"required":["direction","path"],"additionalProperties":false};

function validate370(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.direction === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "direction"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.path === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "path"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
for(const key0 in data){
if(!((((((key0 === "id") || (key0 === "extension")) || (key0 === "path")) || (key0 === "_path")) || (key0 === "direction")) || (key0 === "_direction"))){
const err2 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err3 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(wrapper0.validate(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? wrapper0.validate.errors : vErrors.concat(wrapper0.validate.errors);
errors = vErrors.length;
}
}
}
else {
const err4 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.path !== undefined){
if(!(validate26(data.path, {instancePath:instancePath+"/path",parentData:data,parentDataProperty:"path",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._path !== undefined){
if(!(validate32(data._path, {instancePath:instancePath+"/_path",parentData:data,parentDataProperty:"_path",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.direction !== undefined){
let data5 = data.direction;
if(!((data5 === "ascending") || (data5 === "descending"))){
const err5 = {instancePath:instancePath+"/direction",schemaPath:"#/properties/direction/enum",keyword:"enum",params:{allowedValues: schema53.properties.direction.enum}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
if(data._direction !== undefined){
if(!(validate32(data._direction, {instancePath:instancePath+"/_direction",parentData:data,parentDataProperty:"_direction",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
}
else {
const err6 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
validate370.errors = vErrors;
return errors === 0;
}


function validate340(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.type === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "type"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
for(const key0 in data){
if(!(func2.call(schema49.properties, key0))){
const err1 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err2 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(wrapper0.validate(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? wrapper0.validate.errors : vErrors.concat(wrapper0.validate.errors);
errors = vErrors.length;
}
}
}
else {
const err3 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.type !== undefined){
let data3 = data.type;
if(!(((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((data3 === "Address") || (data3 === "Age")) || (data3 === "Annotation")) || (data3 === "Attachment")) || (data3 === "BackboneElement")) || (data3 === "CodeableConcept")) || (data3 === "Coding")) || (data3 === "ContactDetail")) || (data3 === "ContactPoint")) || (data3 === "Contributor")) || (data3 === "Count")) || (data3 === "DataRequirement")) || (data3 === "Distance")) || (data3 === "Dosage")) || (data3 === "Duration")) || (data3 === "Element")) || (data3 === "ElementDefinition")) || (data3 === "Expression")) || (data3 === "Extension")) || (data3 === "HumanName")) || (data3 === "Identifier")) || (data3 === "MarketingStatus")) || (data3 === "Meta")) || (data3 === "Money")) || (data3 === "MoneyQuantity")) || (data3 === "Narrative")) || (data3 === "ParameterDefinition")) || (data3 === "Period")) || (data3 === "Population")) || (data3 === "ProdCharacteristic")) || (data3 === "ProductShelfLife")) || (data3 === "Quantity")) || (data3 === "Range")) || (data3 === "Ratio")) || (data3 === "Reference")) || (data3 === "RelatedArtifact")) || (data3 === "SampledData")) || (data3 === "Signature")) || (data3 === "SimpleQuantity")) || (data3 === "SubstanceAmount")) || (data3 === "Timing")) || (data3 === "TriggerDefinition")) || (data3 === "UsageContext")) || (data3 === "base64Binary")) || (data3 === "boolean")) || (data3 === "canonical")) || (data3 === "code")) || (data3 === "date")) || (data3 === "dateTime")) || (data3 === "decimal")) || (data3 === "id")) || (data3 === "instant")) || (data3 === "integer")) || (data3 === "markdown")) || (data3 === "oid")) || (data3 === "positiveInt")) || (data3 === "string")) || (data3 === "time")) || (data3 === "unsignedInt")) || (data3 === "uri")) || (data3 === "url")) || (data3 === "uuid")) || (data3 === "xhtml")) || (data3 === "Account")) || (data3 === "ActivityDefinition")) || (data3 === "AdverseEvent")) || (data3 === "AllergyIntolerance")) || (data3 === "Appointment")) || (data3 === "AppointmentResponse")) || (data3 === "AuditEvent")) || (data3 === "Basic")) || (data3 === "Binary")) || (data3 === "BiologicallyDerivedProduct")) || (data3 === "BodyStructure")) || (data3 === "Bundle")) || (data3 === "CapabilityStatement")) || (data3 === "CarePlan")) || (data3 === "CareTeam")) || (data3 === "CatalogEntry")) || (data3 === "ChargeItem")) || (data3 === "ChargeItemDefinition")) || (data3 === "Claim")) || (data3 === "ClaimResponse")) || (data3 === "ClinicalImpression")) || (data3 === "CodeSystem")) || (data3 === "Communication")) || (data3 === "CommunicationRequest")) || (data3 === "CompartmentDefinition")) || (data3 === "Composition")) || (data3 === "ConceptMap")) || (data3 === "Condition")) || (data3 === "Consent")) || (data3 === "Contract")) || (data3 === "Coverage")) || (data3 === "CoverageEligibilityRequest")) || (data3 === "CoverageEligibilityResponse")) || (data3 === "DetectedIssue")) || (data3 === "Device")) || (data3 === "DeviceDefinition")) || (data3 === "DeviceMetric")) || (data3 === "DeviceRequest")) || (data3 === "DeviceUseStatement")) || (data3 === "DiagnosticReport")) || (data3 === "DocumentManifest")) || (data3 === "DocumentReference")) || (data3 === "DomainResource")) || (data3 === "EffectEvidenceSynthesis")) || (data3 === "Encounter")) || (data3 === "Endpoint")) || (data3 === "EnrollmentRequest")) || (data3 === "EnrollmentResponse")) || (data3 === "EpisodeOfCare")) || (data3 === "EventDefinition")) || (data3 === "Evidence")) || (data3 === "EvidenceVariable")) || (data3 === "ExampleScenario")) || (data3 === "ExplanationOfBenefit")) || (data3 === "FamilyMemberHistory")) || (data3 === "Flag")) || (data3 === "Goal")) || (data3 === "GraphDefinition")) || (data3 === "Group")) || (data3 === "GuidanceResponse")) || (data3 === "HealthcareService")) || (data3 === "ImagingStudy")) || (data3 === "Immunization")) || (data3 === "ImmunizationEvaluation")) || (data3 === "ImmunizationRecommendation")) || (data3 === "ImplementationGuide")) || (data3 === "InsurancePlan")) || (data3 === "Invoice")) || (data3 === "Library")) || (data3 === "Linkage")) || (data3 === "List")) || (data3 === "Location")) || (data3 === "Measure")) || (data3 === "MeasureReport")) || (data3 === "Media")) || (data3 === "Medication")) || (data3 === "MedicationAdministration")) || (data3 === "MedicationDispense")) || (data3 === "MedicationKnowledge")) || (data3 === "MedicationRequest")) || (data3 === "MedicationStatement")) || (data3 === "MedicinalProduct")) || (data3 === "MedicinalProductAuthorization")) || (data3 === "MedicinalProductContraindication")) || (data3 === "MedicinalProductIndication")) || (data3 === "MedicinalProductIngredient")) || (data3 === "MedicinalProductInteraction")) || (data3 === "MedicinalProductManufactured")) || (data3 === "MedicinalProductPackaged")) || (data3 === "MedicinalProductPharmaceutical")) || (data3 === "MedicinalProductUndesirableEffect")) || (data3 === "MessageDefinition")) || (data3 === "MessageHeader")) || (data3 === "MolecularSequence")) || (data3 === "NamingSystem")) || (data3 === "NutritionOrder")) || (data3 === "Observation")) || (data3 === "ObservationDefinition")) || (data3 === "OperationDefinition")) || (data3 === "OperationOutcome")) || (data3 === "Organization")) || (data3 === "OrganizationAffiliation")) || (data3 === "Parameters")) || (data3 === "Patient")) || (data3 === "PaymentNotice")) || (data3 === "PaymentReconciliation")) || (data3 === "Person")) || (data3 === "PlanDefinition")) || (data3 === "Practitioner")) || (data3 === "PractitionerRole")) || (data3 === "Procedure")) || (data3 === "Provenance")) || (data3 === "Questionnaire")) || (data3 === "QuestionnaireResponse")) || (data3 === "RelatedPerson")) || (data3 === "RequestGroup")) || (data3 === "ResearchDefinition")) || (data3 === "ResearchElementDefinition")) || (data3 === "ResearchStudy")) || (data3 === "ResearchSubject")) || (data3 === "Resource")) || (data3 === "RiskAssessment")) || (data3 === "RiskEvidenceSynthesis")) || (data3 === "Schedule")) || (data3 === "SearchParameter")) || (data3 === "ServiceRequest")) || (data3 === "Slot")) || (data3 === "Specimen")) || (data3 === "SpecimenDefinition")) || (data3 === "StructureDefinition")) || (data3 === "StructureMap")) || (data3 === "Subscription")) || (data3 === "Substance")) || (data3 === "SubstanceNucleicAcid")) || (data3 === "SubstancePolymer")) || (data3 === "SubstanceProtein")) || (data3 === "SubstanceReferenceInformation")) || (data3 === "SubstanceSourceMaterial")) || (data3 === "SubstanceSpecification")) || (data3 === "SupplyDelivery")) || (data3 === "SupplyRequest")) || (data3 === "Task")) || (data3 === "TerminologyCapabilities")) || (data3 === "TestReport")) || (data3 === "TestScript")) || (data3 === "ValueSet")) || (data3 === "VerificationResult")) || (data3 === "VisionPrescription")) || (data3 === "Type")) || (data3 === "Any"))){
const err4 = {instancePath:instancePath+"/type",schemaPath:"#/properties/type/enum",keyword:"enum",params:{allowedValues: schema49.properties.type.enum}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data._type !== undefined){
if(!(validate32(data._type, {instancePath:instancePath+"/_type",parentData:data,parentDataProperty:"_type",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.profile !== undefined){
let data5 = data.profile;
if(Array.isArray(data5)){
if(data5.length < 1){
const err5 = {instancePath:instancePath+"/profile",schemaPath:"#/properties/profile/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
const len1 = data5.length;
for(let i1=0; i1<len1; i1++){
if(!(validate343(data5[i1], {instancePath:instancePath+"/profile/" + i1,parentData:data5,parentDataProperty:i1,rootData}))){
vErrors = vErrors === null ? validate343.errors : vErrors.concat(validate343.errors);
errors = vErrors.length;
}
}
}
else {
const err6 = {instancePath:instancePath+"/profile",schemaPath:"#/properties/profile/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
if(data.subjectCodeableConcept !== undefined){
if(!(validate106(data.subjectCodeableConcept, {instancePath:instancePath+"/subjectCodeableConcept",parentData:data,parentDataProperty:"subjectCodeableConcept",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.subjectReference !== undefined){
if(!(validate97(data.subjectReference, {instancePath:instancePath+"/subjectReference",parentData:data,parentDataProperty:"subjectReference",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
if(data.mustSupport !== undefined){
let data9 = data.mustSupport;
if(Array.isArray(data9)){
if(data9.length < 1){
const err7 = {instancePath:instancePath+"/mustSupport",schemaPath:"#/properties/mustSupport/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
const len2 = data9.length;
for(let i2=0; i2<len2; i2++){
if(!(validate26(data9[i2], {instancePath:instancePath+"/mustSupport/" + i2,parentData:data9,parentDataProperty:i2,rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
}
else {
const err8 = {instancePath:instancePath+"/mustSupport",schemaPath:"#/properties/mustSupport/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
}
if(data._mustSupport !== undefined){
let data11 = data._mustSupport;
if(Array.isArray(data11)){
if(data11.length < 1){
const err9 = {instancePath:instancePath+"/_mustSupport",schemaPath:"#/properties/_mustSupport/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
const len3 = data11.length;
for(let i3=0; i3<len3; i3++){
if(!(validate32(data11[i3], {instancePath:instancePath+"/_mustSupport/" + i3,parentData:data11,parentDataProperty:i3,rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
}
else {
const err10 = {instancePath:instancePath+"/_mustSupport",schemaPath:"#/properties/_mustSupport/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err10];
}
else {
vErrors.push(err10);
}
errors++;
}
}
if(data.codeFilter !== undefined){
let data13 = data.codeFilter;
if(Array.isArray(data13)){
if(data13.length < 1){
const err11 = {instancePath:instancePath+"/codeFilter",schemaPath:"#/properties/codeFilter/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err11];
}
else {
vErrors.push(err11);
}
errors++;
}
const len4 = data13.length;
for(let i4=0; i4<len4; i4++){
if(!(validate349(data13[i4], {instancePath:instancePath+"/codeFilter/" + i4,parentData:data13,parentDataProperty:i4,rootData}))){
vErrors = vErrors === null ? validate349.errors : vErrors.concat(validate349.errors);
errors = vErrors.length;
}
}
}
else {
const err12 = {instancePath:instancePath+"/codeFilter",schemaPath:"#/properties/codeFilter/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err12];
}
else {
vErrors.push(err12);
}
errors++;
}
}
if(data.dateFilter !== undefined){
let data15 = data.dateFilter;
if(Array.isArray(data15)){
if(data15.length < 1){
const err13 = {instancePath:instancePath+"/dateFilter",schemaPath:"#/properties/dateFilter/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err13];
}
else {
vErrors.push(err13);
}
errors++;
}
const len5 = data15.length;
for(let i5=0; i5<len5; i5++){
if(!(validate358(data15[i5], {instancePath:instancePath+"/dateFilter/" + i5,parentData:data15,parentDataProperty:i5,rootData}))){
vErrors = vErrors === null ? validate358.errors : vErrors.concat(validate358.errors);
errors = vErrors.length;
}
}
}
else {
const err14 = {instancePath:instancePath+"/dateFilter",schemaPath:"#/properties/dateFilter/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err14];
}
else {
vErrors.push(err14);
}
errors++;
}
}
if(data.limit !== undefined){
if(!(validate171(data.limit, {instancePath:instancePath+"/limit",parentData:data,parentDataProperty:"limit",rootData}))){
vErrors = vErrors === null ? validate171.errors : vErrors.concat(validate171.errors);
errors = vErrors.length;
}
}
if(data._limit !== undefined){
if(!(validate32(data._limit, {instancePath:instancePath+"/_limit",parentData:data,parentDataProperty:"_limit",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.sort !== undefined){
let data19 = data.sort;
if(Array.isArray(data19)){
if(data19.length < 1){
const err15 = {instancePath:instancePath+"/sort",schemaPath:"#/properties/sort/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err15];
}
else {
vErrors.push(err15);
}
errors++;
}
const len6 = data19.length;
for(let i6=0; i6<len6; i6++){
if(!(validate370(data19[i6], {instancePath:instancePath+"/sort/" + i6,parentData:data19,parentDataProperty:i6,rootData}))){
vErrors = vErrors === null ? validate370.errors : vErrors.concat(validate370.errors);
errors = vErrors.length;
}
}
}
else {
const err16 = {instancePath:instancePath+"/sort",schemaPath:"#/properties/sort/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err16];
}
else {
vErrors.push(err16);
}
errors++;
}
}
let count0 = 0;
if(data["subjectCodeableConcept"] !== undefined){
count0++;
}
if(data["subjectReference"] !== undefined){
count0++;
}
if(count0 > 1){
const err17 = {instancePath,schemaPath:"#/choices",keyword:"choices",params:{}};
if(vErrors === null){
vErrors = [err17];
}
else {
vErrors.push(err17);
}
errors++;
}
}
else {
const err18 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err18];
}
else {
vErrors.push(err18);
}
errors++;
}
validate340.errors = vErrors;
return errors === 0;
}

const schema54 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"description":{"$ref":"#/definitions/string"},"_description":{"$ref":"#/definitions/Element"},"name":{"$ref":"#/definitions/id"},"_name":{"$ref":"#/definitions/Element"},"language":{"type":"string","enum":["text/cql","text/fhirpath","application/x-fhir-query"]},"_language":{"$ref":"#/definitions/Element"},"expression":{"$ref":"#/definitions/string"},"_expression":{"$ref":"#/definitions/Element"},"reference":{"$ref":"#/definitions/uri"},"_reference":{"$ref":"#/definitions/Element"}},"required":["language"],"additionalProperties":false};

function validate377(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.language === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "language"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
for(const key0 in data){
if(!(func2.call(schema54.properties, key0))){
const err1 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err2 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(wrapper0.validate(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? wrapper0.validate.errors : vErrors.concat(wrapper0.validate.errors);
errors = vErrors.length;
}
}
}
else {
const err3 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.description !== undefined){
if(!(validate26(data.description, {instancePath:instancePath+"/description",parentData:data,parentDataProperty:"description",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._description !== undefined){
if(!(validate32(data._description, {instancePath:instancePath+"/_description",parentData:data,parentDataProperty:"_description",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.name !== undefined){
if(!(validate23(data.name, {instancePath:instancePath+"/name",parentData:data,parentDataProperty:"name",rootData}))){
vErrors = vErrors === null ? validate23.errors : vErrors.concat(validate23.errors);
errors = vErrors.length;
}
}
if(data._name !== undefined){
if(!(validate32(data._name, {instancePath:instancePath+"/_name",parentData:data,parentDataProperty:"_name",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.language !== undefined){
let data7 = data.language;
if(typeof data7 !== "string"){
const err4 = {instancePath:instancePath+"/language",schemaPath:"#/properties/language/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
if(!(((data7 === "text/cql") || (data7 === "text/fhirpath")) || (data7 === "application/x-fhir-query"))){
const err5 = {instancePath:instancePath+"/language",schemaPath:"#/properties/language/enum",keyword:"enum",params:{allowedValues: schema54.properties.language.enum}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
if(data._language !== undefined){
if(!(validate32(data._language, {instancePath:instancePath+"/_language",parentData:data,parentDataProperty:"_language",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.expression !== undefined){
if(!(validate26(data.expression, {instancePath:instancePath+"/expression",parentData:data,parentDataProperty:"expression",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._expression !== undefined){
if(!(validate32(data._expression, {instancePath:instancePath+"/_expression",parentData:data,parentDataProperty:"_expression",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.reference !== undefined){
if(!(validate30(data.reference, {instancePath:instancePath+"/reference",parentData:data,parentDataProperty:"reference",rootData}))){
vErrors = vErrors === null ? validate30.errors : vErrors.concat(validate30.errors);
errors = vErrors.length;
}
}
if(data._reference !== undefined){
if(!(validate32(data._reference, {instancePath:instancePath+"/_reference",parentData:data,parentDataProperty:"_reference",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
}
else {
const err6 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
validate377.errors = vErrors;
return errors === 0;
}

const schema55 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"name":{"$ref":"#/definitions/code"},"_name":{"$ref":"#/definitions/Element"},"use":{"enum":["in","out"]},"_use":{"$ref":"#/definitions/Element"},"min":{"$ref":"#/definitions/integer"},"_min":{"$ref":"#/definitions/Element"},"max":{"$ref":"#/definitions/string"},"_max":{"$ref":"#/definitions/Element"},"documentation":{"$ref":"#/definitions/string"},"_documentation":{"$ref":"#/definitions/Element"},"type":{"enum":["Address","Age","Annotation","Attachment","BackboneElement","CodeableConcept","Coding","ContactDetail","ContactPoint","Contributor","Count","DataRequirement","Distance","Dosage","Duration","Element","ElementDefinition","Expression","Extension","HumanName","Identifier","MarketingStatus","Meta","Money","MoneyQuantity","Narrative","ParameterDefinition","Period","Population","ProdCharacteristic","ProductShelfLife","Quantity","Range","Ratio","Reference","RelatedArtifact","SampledData","Signature","SimpleQuantity","SubstanceAmount","Timing","TriggerDefinition","UsageContext","base64Binary","boolean","canonical","code","date","dateTime","decimal","id","instant","integer","markdown","oid","positiveInt","string","time","unsignedInt","uri","url","uuid","xhtml","Account","ActivityDefinition","AdverseEvent","AllergyIntolerance","Appointment","AppointmentResponse","AuditEvent","Basic","Binary","BiologicallyDerivedProduct","BodyStructure","Bundle","CapabilityStatement","CarePlan","CareTeam","CatalogEntry","ChargeItem","ChargeItemDefinition","Claim","ClaimResponse","ClinicalImpression","CodeSystem","Communication","CommunicationRequest","CompartmentDefinition","Composition","ConceptMap","Condition","Consent","Contract","Coverage","CoverageEligibilityRequest","CoverageEligibilityResponse","DetectedIssue","Device","DeviceDefinition","DeviceMetric","DeviceRequest","DeviceUseStatement","DiagnosticReport","DocumentManifest","DocumentReference","DomainResource","EffectEvidenceSynthesis","Encounter","Endpoint","EnrollmentRequest","EnrollmentResponse","EpisodeOfCare","EventDefinition","Evidence","EvidenceVariable","ExampleScenario","ExplanationOfBenefit","FamilyMemberHistory","Flag","Goal","GraphDefinition","Group","GuidanceResponse","HealthcareService","ImagingStudy","Immunization","ImmunizationEvaluation","ImmunizationRecommendation","ImplementationGuide","InsurancePlan","Invoice","Library","Linkage","List","Location","Measure","MeasureReport","Media","Medication","MedicationAdministration","MedicationDispense","MedicationKnowledge","MedicationRequest","MedicationStatement","MedicinalProduct","MedicinalProductAuthorization","MedicinalProductContraindication","MedicinalProductIndication","MedicinalProductIngredient","MedicinalProductInteraction","MedicinalProductManufactured","MedicinalProductPackaged","MedicinalProductPharmaceutical","MedicinalProductUndesirableEffect","MessageDefinition","MessageHeader","MolecularSequence","NamingSystem","NutritionOrder","Observation","ObservationDefinition","OperationDefinition","OperationOutcome","Organization","OrganizationAffiliation","Parameters","Patient","PaymentNotice","PaymentReconciliation","Person","PlanDefinition","Practitioner","PractitionerRole","Procedure","Provenance","Questionnaire","QuestionnaireResponse","RelatedPerson","RequestGroup","ResearchDefinition","ResearchElementDefinition","ResearchStudy","ResearchSubject","Resource","RiskAssessment","RiskEvidenceSynthesis","Schedule","SearchParameter","ServiceRequest","Slot","Specimen","SpecimenDefinition","StructureDefinition","StructureMap","Subscription","Substance","SubstanceNucleicAcid","SubstancePolymer","SubstanceProtein","SubstanceReferenceInformation","SubstanceSourceMaterial","SubstanceSpecification","SupplyDelivery","SupplyRequest","Task","TerminologyCapabilities","TestReport","TestScript","ValueSet","VerificationResult","VisionPrescription","Type","Any"]},"_type":{"$ref":"#/definitions/Element"},"profile":{"$ref":"#/definitions/canonical"}},"required":["type","use"],"additionalProperties":false};
const schema56 = {"type":"integer"};

function validate394(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(!(((typeof data == "number") && (!(data % 1) && !isNaN(data))) && (isFinite(data)))){
const err0 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "integer"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
validate394.errors = vErrors;
return errors === 0;
}


function validate389(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.type === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "type"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.use === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "use"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
for(const key0 in data){
if(!(func2.call(schema55.properties, key0))){
const err2 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err3 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(wrapper0.validate(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? wrapper0.validate.errors : vErrors.concat(wrapper0.validate.errors);
errors = vErrors.length;
}
}
}
else {
const err4 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.name !== undefined){
if(!(validate91(data.name, {instancePath:instancePath+"/name",parentData:data,parentDataProperty:"name",rootData}))){
vErrors = vErrors === null ? validate91.errors : vErrors.concat(validate91.errors);
errors = vErrors.length;
}
}
if(data._name !== undefined){
if(!(validate32(data._name, {instancePath:instancePath+"/_name",parentData:data,parentDataProperty:"_name",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.use !== undefined){
let data5 = data.use;
if(!((data5 === "in") || (data5 === "out"))){
const err5 = {instancePath:instancePath+"/use",schemaPath:"#/properties/use/enum",keyword:"enum",params:{allowedValues: schema55.properties.use.enum}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
if(data._use !== undefined){
if(!(validate32(data._use, {instancePath:instancePath+"/_use",parentData:data,parentDataProperty:"_use",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.min !== undefined){
if(!(validate394(data.min, {instancePath:instancePath+"/min",parentData:data,parentDataProperty:"min",rootData}))){
vErrors = vErrors === null ? validate394.errors : vErrors.concat(validate394.errors);
errors = vErrors.length;
}
}
if(data._min !== undefined){
if(!(validate32(data._min, {instancePath:instancePath+"/_min",parentData:data,parentDataProperty:"_min",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.max !== undefined){
if(!(validate26(data.max, {instancePath:instancePath+"/max",parentData:data,parentDataProperty:"max",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._max !== undefined){
if(!(validate32(data._max, {instancePath:instancePath+"/_max",parentData:data,parentDataProperty:"_max",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.documentation !== undefined){
if(!(validate26(data.documentation, {instancePath:instancePath+"/documentation",parentData:data,parentDataProperty:"documentation",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._documentation !== undefined){
if(!(validate32(data._documentation, {instancePath:instancePath+"/_documentation",parentData:data,parentDataProperty:"_documentation",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.type !== undefined){
let data13 = data.type;
if(!(((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((data13 === "Address") || (data13 === "Age")) || (data13 === "Annotation")) || (data13 === "Attachment")) || (data13 === "BackboneElement")) || (data13 === "CodeableConcept")) || (data13 === "Coding")) || (data13 === "ContactDetail")) || (data13 === "ContactPoint")) || (data13 === "Contributor")) || (data13 === "Count")) || (data13 === "DataRequirement")) || (data13 === "Distance")) || (data13 === "Dosage")) || (data13 === "Duration")) || (data13 === "Element")) || (data13 === "ElementDefinition")) || (data13 === "Expression")) || (data13 === "Extension")) || (data13 === "HumanName")) || (data13 === "Identifier")) || (data13 === "MarketingStatus")) || (data13 === "Meta")) || (data13 === "Money")) || (data13 === "MoneyQuantity")) || (data13 === "Narrative")) || (data13 === "ParameterDefinition")) || (data13 === "Period")) || (data13 === "Population")) || (data13 === "ProdCharacteristic")) || (data13 === "ProductShelfLife")) || (data13 === "Quantity")) || (data13 === "Range")) || (data13 === "Ratio")) || (data13 === "Reference")) || (data13 === "RelatedArtifact")) || (data13 === "SampledData")) || (data13 === "Signature")) || (data13 === "SimpleQuantity")) || (data13 === "SubstanceAmount")) || (data13 === "Timing")) || (data13 === "TriggerDefinition")) || (data13 === "UsageContext")) || (data13 === "base64Binary")) || (data13 === "boolean")) || (data13 === "canonical")) || (data13 === "code")) || (data13 === "date")) || (data13 === "dateTime")) || (data13 === "decimal")) || (data13 === "id")) || (data13 === "instant")) || (data13 === "integer")) || (data13 === "markdown")) || (data13 === "oid")) || (data13 === "positiveInt")) || (data13 === "string")) || (data13 === "time")) || (data13 === "unsignedInt")) || (data13 === "uri")) || (data13 === "url")) || (data13 === "uuid")) || (data13 === "xhtml")) || (data13 === "Account")) || (data13 === "ActivityDefinition")) || (data13 === "AdverseEvent")) || (data13 === "AllergyIntolerance")) || (data13 === "Appointment")) || (data13 === "AppointmentResponse")) || (data13 === "AuditEvent")) || (data13 === "Basic")) || (data13 === "Binary")) || (data13 === "BiologicallyDerivedProduct")) || (data13 === "BodyStructure")) || (data13 === "Bundle")) || (data13 === "CapabilityStatement")) || (data13 === "CarePlan")) || (data13 === "CareTeam")) || (data13 === "CatalogEntry")) || (data13 === "ChargeItem")) || (data13 === "ChargeItemDefinition")) || (data13 === "Claim")) || (data13 === "ClaimResponse")) || (data13 === "ClinicalImpression")) || (data13 === "CodeSystem")) || (data13 === "Communication")) || (data13 === "CommunicationRequest")) || (data13 === "CompartmentDefinition")) || (data13 === "Composition")) || (data13 === "ConceptMap")) || (data13 === "Condition")) || (data13 === "Consent")) || (data13 === "Contract")) || (data13 === "Coverage")) || (data13 === "CoverageEligibilityRequest")) || (data13 === "CoverageEligibilityResponse")) || (data13 === "DetectedIssue")) || (data13 === "Device")) || (data13 === "DeviceDefinition")) || (data13 === "DeviceMetric")) || (data13 === "DeviceRequest")) || (data13 === "DeviceUseStatement")) || (data13 === "DiagnosticReport")) || (data13 === "DocumentManifest")) || (data13 === "DocumentReference")) || (data13 === "DomainResource")) || (data13 === "EffectEvidenceSynthesis")) || (data13 === "Encounter")) || (data13 === "Endpoint")) || (data13 === "EnrollmentRequest")) || (data13 === "EnrollmentResponse")) || (data13 === "EpisodeOfCare")) || (data13 === "EventDefinition")) || (data13 === "Evidence")) || (data13 === "EvidenceVariable")) || (data13 === "ExampleScenario")) || (data13 === "ExplanationOfBenefit")) || (data13 === "FamilyMemberHistory")) || (data13 === "Flag")) || (data13 === "Goal")) || (data13 === "GraphDefinition")) || (data13 === "Group")) || (data13 === "GuidanceResponse")) || (data13 === "HealthcareService")) || (data13 === "ImagingStudy")) || (data13 === "Immunization")) || (data13 === "ImmunizationEvaluation")) || (data13 === "ImmunizationRecommendation")) || (data13 === "ImplementationGuide")) || (data13 === "InsurancePlan")) || (data13 === "Invoice")) || (data13 === "Library")) || (data13 === "Linkage")) || (data13 === "List")) || (data13 === "Location")) || (data13 === "Measure")) || (data13 === "MeasureReport")) || (data13 === "Media")) || (data13 === "Medication")) || (data13 === "MedicationAdministration")) || (data13 === "MedicationDispense")) || (data13 === "MedicationKnowledge")) || (data13 === "MedicationRequest")) || (data13 === "MedicationStatement")) || (data13 === "MedicinalProduct")) || (data13 === "MedicinalProductAuthorization")) || (data13 === "MedicinalProductContraindication")) || (data13 === "MedicinalProductIndication")) || (data13 === "MedicinalProductIngredient")) || (data13 === "MedicinalProductInteraction")) || (data13 === "MedicinalProductManufactured")) || (data13 === "MedicinalProductPackaged")) || (data13 === "MedicinalProductPharmaceutical")) || (data13 === "MedicinalProductUndesirableEffect")) || (data13 === "MessageDefinition")) || (data13 === "MessageHeader")) || (data13 === "MolecularSequence")) || (data13 === "NamingSystem")) || (data13 === "NutritionOrder")) || (data13 === "Observation")) || (data13 === "ObservationDefinition")) || (data13 === "OperationDefinition")) || (data13 === "OperationOutcome")) || (data13 === "Organization")) || (data13 === "OrganizationAffiliation")) || (data13 === "Parameters")) || (data13 === "Patient")) || (data13 === "PaymentNotice")) || (data13 === "PaymentReconciliation")) || (data13 === "Person")) || (data13 === "PlanDefinition")) || (data13 === "Practitioner")) || (data13 === "PractitionerRole")) || (data13 === "Procedure")) || (data13 === "Provenance")) || (data13 === "Questionnaire")) || (data13 === "QuestionnaireResponse")) || (data13 === "RelatedPerson")) || (data13 === "RequestGroup")) || (data13 === "ResearchDefinition")) || (data13 === "ResearchElementDefinition")) || (data13 === "ResearchStudy")) || (data13 === "ResearchSubject")) || (data13 === "Resource")) || (data13 === "RiskAssessment")) || (data13 === "RiskEvidenceSynthesis")) || (data13 === "Schedule")) || (data13 === "SearchParameter")) || (data13 === "ServiceRequest")) || (data13 === "Slot")) || (data13 === "Specimen")) || (data13 === "SpecimenDefinition")) || (data13 === "StructureDefinition")) || (data13 === "StructureMap")) || (data13 === "Subscription")) || (data13 === "Substance")) || (data13 === "SubstanceNucleicAcid")) || (data13 === "SubstancePolymer")) || (data13 === "SubstanceProtein")) || (data13 === "SubstanceReferenceInformation")) || (data13 === "SubstanceSourceMaterial")) || (data13 === "SubstanceSpecification")) || (data13 === "SupplyDelivery")) || (data13 === "SupplyRequest")) || (data13 === "Task")) || (data13 === "TerminologyCapabilities")) || (data13 === "TestReport")) || (data13 === "TestScript")) || (data13 === "ValueSet")) || (data13 === "VerificationResult")) || (data13 === "VisionPrescription")) || (data13 === "Type")) || (data13 === "Any"))){
const err6 = {instancePath:instancePath+"/type",schemaPath:"#/properties/type/enum",keyword:"enum",params:{allowedValues: schema55.properties.type.enum}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
if(data._type !== undefined){
if(!(validate32(data._type, {instancePath:instancePath+"/_type",parentData:data,parentDataProperty:"_type",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.profile !== undefined){
if(!(validate343(data.profile, {instancePath:instancePath+"/profile",parentData:data,parentDataProperty:"profile",rootData}))){
vErrors = vErrors === null ? validate343.errors : vErrors.concat(validate343.errors);
errors = vErrors.length;
}
}
}
else {
const err7 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
validate389.errors = vErrors;
return errors === 0;
}

const schema57 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"type":{"enum":["documentation","justification","citation","predecessor","successor","derived-from","depends-on","composed-of"]},"_type":{"$ref":"#/definitions/Element"},"label":{"$ref":"#/definitions/string"},"_label":{"$ref":"#/definitions/Element"},"display":{"$ref":"#/definitions/string"},"_display":{"$ref":"#/definitions/Element"},"citation":{"$ref":"#/definitions/markdown"},"_citation":{"$ref":"#/definitions/Element"},"url":{"$ref":"#/definitions/url"},"_url":{"$ref":"#/definitions/Element"},"document":{"$ref":"#/definitions/Attachment"},"resource":{"$ref":"#/definitions/canonical"}},"required":["type"],"additionalProperties":false};

function validate404(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.type === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "type"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
for(const key0 in data){
if(!(func2.call(schema57.properties, key0))){
const err1 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err2 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(wrapper0.validate(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? wrapper0.validate.errors : vErrors.concat(wrapper0.validate.errors);
errors = vErrors.length;
}
}
}
else {
const err3 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.type !== undefined){
let data3 = data.type;
if(!((((((((data3 === "documentation") || (data3 === "justification")) || (data3 === "citation")) || (data3 === "predecessor")) || (data3 === "successor")) || (data3 === "derived-from")) || (data3 === "depends-on")) || (data3 === "composed-of"))){
const err4 = {instancePath:instancePath+"/type",schemaPath:"#/properties/type/enum",keyword:"enum",params:{allowedValues: schema57.properties.type.enum}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data._type !== undefined){
if(!(validate32(data._type, {instancePath:instancePath+"/_type",parentData:data,parentDataProperty:"_type",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.label !== undefined){
if(!(validate26(data.label, {instancePath:instancePath+"/label",parentData:data,parentDataProperty:"label",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._label !== undefined){
if(!(validate32(data._label, {instancePath:instancePath+"/_label",parentData:data,parentDataProperty:"_label",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.display !== undefined){
if(!(validate26(data.display, {instancePath:instancePath+"/display",parentData:data,parentDataProperty:"display",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._display !== undefined){
if(!(validate32(data._display, {instancePath:instancePath+"/_display",parentData:data,parentDataProperty:"_display",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.citation !== undefined){
if(!(validate137(data.citation, {instancePath:instancePath+"/citation",parentData:data,parentDataProperty:"citation",rootData}))){
vErrors = vErrors === null ? validate137.errors : vErrors.concat(validate137.errors);
errors = vErrors.length;
}
}
if(data._citation !== undefined){
if(!(validate32(data._citation, {instancePath:instancePath+"/_citation",parentData:data,parentDataProperty:"_citation",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.url !== undefined){
if(!(validate150(data.url, {instancePath:instancePath+"/url",parentData:data,parentDataProperty:"url",rootData}))){
vErrors = vErrors === null ? validate150.errors : vErrors.concat(validate150.errors);
errors = vErrors.length;
}
}
if(data._url !== undefined){
if(!(validate32(data._url, {instancePath:instancePath+"/_url",parentData:data,parentDataProperty:"_url",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.document !== undefined){
if(!(validate141(data.document, {instancePath:instancePath+"/document",parentData:data,parentDataProperty:"document",rootData}))){
vErrors = vErrors === null ? validate141.errors : vErrors.concat(validate141.errors);
errors = vErrors.length;
}
}
if(data.resource !== undefined){
if(!(validate343(data.resource, {instancePath:instancePath+"/resource",parentData:data,parentDataProperty:"resource",rootData}))){
vErrors = vErrors === null ? validate343.errors : vErrors.concat(validate343.errors);
errors = vErrors.length;
}
}
}
else {
const err5 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
validate404.errors = vErrors;
return errors === 0;
}

const schema58 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"type":{"enum":["named-event","periodic","data-changed","data-added","data-modified","data-removed","data-accessed","data-access-ended"]},"_type":{"$ref":"#/definitions/Element"},"name":{"$ref":"#/definitions/string"},"_name":{"$ref":"#/definitions/Element"},"timingTiming":{"$ref":"#/definitions/Timing"},"timingReference":{"$ref":"#/definitions/Reference"},"timingDate":{"type":"string","pattern":"^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1]))?)?$"},"_timingDate":{"$ref":"#/definitions/Element"},"timingDateTime":{"type":"string","pattern":"^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1])(T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00)))?)?)?$"},"_timingDateTime":{"$ref":"#/definitions/Element"},"data":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/DataRequirement"}},"condition":{"$ref":"#/definitions/Expression"}},"required":["type"],"choices":[{"element":"timing[x]","properties":["timingTiming","timingReference","timingDate","timingDateTime"],"required":false}],"additionalProperties":false};
const pattern6 = new RegExp("^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1]))?)?$", "u");

function validate418(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.type === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "type"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
for(const key0 in data){
if(!(func2.call(schema58.properties, key0))){
const err1 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err2 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(wrapper0.validate(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? wrapper0.validate.errors : vErrors.concat(wrapper0.validate.errors);
errors = vErrors.length;
}
}
}
else {
const err3 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.type !== undefined){
let data3 = data.type;
if(!((((((((data3 === "named-event") || (data3 === "periodic")) || (data3 === "data-changed")) || (data3 === "data-added")) || (data3 === "data-modified")) || (data3 === "data-removed")) || (data3 === "data-accessed")) || (data3 === "data-access-ended"))){
const err4 = {instancePath:instancePath+"/type",schemaPath:"#/properties/type/enum",keyword:"enum",params:{allowedValues: schema58.properties.type.enum}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data._type !== undefined){
if(!(validate32(data._type, {instancePath:instancePath+"/_type",parentData:data,parentDataProperty:"_type",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.name !== undefined){
if(!(validate26(data.name, {instancePath:instancePath+"/name",parentData:data,parentDataProperty:"name",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._name !== undefined){
if(!(validate32(data._name, {instancePath:instancePath+"/_name",parentData:data,parentDataProperty:"_name",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.timingTiming !== undefined){
if(!(validate290(data.timingTiming, {instancePath:instancePath+"/timingTiming",parentData:data,parentDataProperty:"timingTiming",rootData}))){
vErrors = vErrors === null ? validate290.errors : vErrors.concat(validate290.errors);
errors = vErrors.length;
}
}
if(data.timingReference !== undefined){
if(!(validate97(data.timingReference, {instancePath:instancePath+"/timingReference",parentData:data,parentDataProperty:"timingReference",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
if(data.timingDate !== undefined){
let data9 = data.timingDate;
if(typeof data9 === "string"){
if(!pattern6.test(data9)){
const err5 = {instancePath:instancePath+"/timingDate",schemaPath:"#/properties/timingDate/pattern",keyword:"pattern",params:{pattern: "^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1]))?)?$"}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
else {
const err6 = {instancePath:instancePath+"/timingDate",schemaPath:"#/properties/timingDate/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
if(data._timingDate !== undefined){
if(!(validate32(data._timingDate, {instancePath:instancePath+"/_timingDate",parentData:data,parentDataProperty:"_timingDate",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.timingDateTime !== undefined){
let data11 = data.timingDateTime;
if(typeof data11 === "string"){
if(!pattern7.test(data11)){
const err7 = {instancePath:instancePath+"/timingDateTime",schemaPath:"#/properties/timingDateTime/pattern",keyword:"pattern",params:{pattern: "^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1])(T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00)))?)?)?$"}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
}
else {
const err8 = {instancePath:instancePath+"/timingDateTime",schemaPath:"#/properties/timingDateTime/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
}
if(data._timingDateTime !== undefined){
if(!(validate32(data._timingDateTime, {instancePath:instancePath+"/_timingDateTime",parentData:data,parentDataProperty:"_timingDateTime",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.data !== undefined){
let data13 = data.data;
if(Array.isArray(data13)){
if(data13.length < 1){
const err9 = {instancePath:instancePath+"/data",schemaPath:"#/properties/data/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
const len1 = data13.length;
for(let i1=0; i1<len1; i1++){
if(!(validate340(data13[i1], {instancePath:instancePath+"/data/" + i1,parentData:data13,parentDataProperty:i1,rootData}))){
vErrors = vErrors === null ? validate340.errors : vErrors.concat(validate340.errors);
errors = vErrors.length;
}
}
}
else {
const err10 = {instancePath:instancePath+"/data",schemaPath:"#/properties/data/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err10];
}
else {
vErrors.push(err10);
}
errors++;
}
}
if(data.condition !== undefined){
if(!(validate377(data.condition, {instancePath:instancePath+"/condition",parentData:data,parentDataProperty:"condition",rootData}))){
vErrors = vErrors === null ? validate377.errors : vErrors.concat(validate377.errors);
errors = vErrors.length;
}
}
let count0 = 0;
if(data["timingTiming"] !== undefined){
count0++;
}
if(data["timingReference"] !== undefined){
count0++;
}
if(data["timingDate"] !== undefined){
count0++;
}
if(data["timingDateTime"] !== undefined){
count0++;
}
if(count0 > 1){
const err11 = {instancePath,schemaPath:"#/choices",keyword:"choices",params:{}};
if(vErrors === null){
vErrors = [err11];
}
else {
vErrors.push(err11);
}
errors++;
}
}
else {
const err12 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err12];
}
else {
vErrors.push(err12);
}
errors++;
}
validate418.errors = vErrors;
return errors === 0;
}

const schema59 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"code":{"$ref":"#/definitions/Coding"},"valueCodeableConcept":{"$ref":"#/definitions/CodeableConcept"},"valueQuantity":{"$ref":"#/definitions/Quantity"},"valueRange":{"$ref":"#/definitions/Range"},"valueReference":{"$ref":"#/definitions/Reference"}},"required":["code"],"choices":[{"element":"value[x]","properties":["valueCodeableConcept","valueQuantity","valueRange","valueReference"],"required":true}],"additionalProperties":false};

function validate430(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.code === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "code"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
for(const key0 in data){
if(!(((((((key0 === "id") || (key0 === "extension")) || (key0 === "code")) || (key0 === "valueCodeableConcept")) || (key0 === "valueQuantity")) || (key0 === "valueRange")) || (key0 === "valueReference"))){
const err1 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err2 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(wrapper0.validate(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? wrapper0.validate.errors : vErrors.concat(wrapper0.validate.errors);
errors = vErrors.length;
}
}
}
else {
const err3 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.code !== undefined){
if(!(validate108(data.code, {instancePath:instancePath+"/code",parentData:data,parentDataProperty:"code",rootData}))){
vErrors = vErrors === null ? validate108.errors : vErrors.concat(validate108.errors);
errors = vErrors.length;
}
}
if(data.valueCodeableConcept !== undefined){
if(!(validate106(data.valueCodeableConcept, {instancePath:instancePath+"/valueCodeableConcept",parentData:data,parentDataProperty:"valueCodeableConcept",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.valueQuantity !== undefined){
if(!(validate236(data.valueQuantity, {instancePath:instancePath+"/valueQuantity",parentData:data,parentDataProperty:"valueQuantity",rootData}))){
vErrors = vErrors === null ? validate236.errors : vErrors.concat(validate236.errors);
errors = vErrors.length;
}
}
if(data.valueRange !== undefined){
if(!(validate248(data.valueRange, {instancePath:instancePath+"/valueRange",parentData:data,parentDataProperty:"valueRange",rootData}))){
vErrors = vErrors === null ? validate248.errors : vErrors.concat(validate248.errors);
errors = vErrors.length;
}
}
if(data.valueReference !== undefined){
if(!(validate97(data.valueReference, {instancePath:instancePath+"/valueReference",parentData:data,parentDataProperty:"valueReference",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
let count0 = 0;
if(data["valueCodeableConcept"] !== undefined){
count0++;
}
if(data["valueQuantity"] !== undefined){
count0++;
}
if(data["valueRange"] !== undefined){
count0++;
}
if(data["valueReference"] !== undefined){
count0++;
}
if(count0 !== 1){
const err4 = {instancePath,schemaPath:"#/choices",keyword:"choices",params:{}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
else {
const err5 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
validate430.errors = vErrors;
return errors === 0;
}

const schema60 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"sequence":{"$ref":"#/definitions/integer"},"_sequence":{"$ref":"#/definitions/Element"},"text":{"$ref":"#/definitions/string"},"_text":{"$ref":"#/definitions/Element"},"additionalInstruction":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"patientInstruction":{"$ref":"#/definitions/string"},"_patientInstruction":{"$ref":"#/definitions/Element"},"timing":{"$ref":"#/definitions/Timing"},"asNeededBoolean":{"type":"boolean"},"_asNeededBoolean":{"$ref":"#/definitions/Element"},"asNeededCodeableConcept":{"$ref":"#/definitions/CodeableConcept"},"site":{"$ref":"#/definitions/CodeableConcept"},"route":{"$ref":"#/definitions/CodeableConcept"},"method":{"$ref":"#/definitions/CodeableConcept"},"doseAndRate":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Dosage_DoseAndRate"}},"maxDosePerPeriod":{"$ref":"#/definitions/Ratio"},"maxDosePerAdministration":{"$ref":"#/definitions/Quantity"},"maxDosePerLifetime":{"$ref":"#/definitions/Quantity"}},"choices":[{"element":"asNeeded[x]","properties":["asNeededBoolean","asNeededCodeableConcept"],"required":false}],"additionalProperties":false};
const schema61 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"type":{"$ref":"#/definitions/CodeableConcept"},"doseRange":{"$ref":"#/definitions/Range"},"doseQuantity":{"$ref":"#/definitions/Quantity"},"rateRatio":{"$ref":"#/definitions/Ratio"},"rateRange":{"$ref":"#/definitions/Range"},"rateQuantity":{"$ref":"#/definitions/Quantity"}},"choices":[{"element":"dose[x]","properties":["doseRange","doseQuantity"],"required":false},{"element":"rate[x]","properties":["rateRatio","rateRange","rateQuantity"],"required":false}],"additionalProperties":false};

function validate453(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
for(const key0 in data){
if(!((((((((key0 === "id") || (key0 === "extension")) || (key0 === "type")) || (key0 === "doseRange")) || (key0 === "doseQuantity")) || (key0 === "rateRatio")) || (key0 === "rateRange")) || (key0 === "rateQuantity"))){
const err0 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err1 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(wrapper0.validate(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? wrapper0.validate.errors : vErrors.concat(wrapper0.validate.errors);
errors = vErrors.length;
}
}
}
else {
const err2 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.type !== undefined){
if(!(validate106(data.type, {instancePath:instancePath+"/type",parentData:data,parentDataProperty:"type",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.doseRange !== undefined){
if(!(validate248(data.doseRange, {instancePath:instancePath+"/doseRange",parentData:data,parentDataProperty:"doseRange",rootData}))){
vErrors = vErrors === null ? validate248.errors : vErrors.concat(validate248.errors);
errors = vErrors.length;
}
}
if(data.doseQuantity !== undefined){
if(!(validate236(data.doseQuantity, {instancePath:instancePath+"/doseQuantity",parentData:data,parentDataProperty:"doseQuantity",rootData}))){
vErrors = vErrors === null ? validate236.errors : vErrors.concat(validate236.errors);
errors = vErrors.length;
}
}
if(data.rateRatio !== undefined){
if(!(validate253(data.rateRatio, {instancePath:instancePath+"/rateRatio",parentData:data,parentDataProperty:"rateRatio",rootData}))){
vErrors = vErrors === null ? validate253.errors : vErrors.concat(validate253.errors);
errors = vErrors.length;
}
}
if(data.rateRange !== undefined){
if(!(validate248(data.rateRange, {instancePath:instancePath+"/rateRange",parentData:data,parentDataProperty:"rateRange",rootData}))){
vErrors = vErrors === null ? validate248.errors : vErrors.concat(validate248.errors);
errors = vErrors.length;
}
}
if(data.rateQuantity !== undefined){
if(!(validate236(data.rateQuantity, {instancePath:instancePath+"/rateQuantity",parentData:data,parentDataProperty:"rateQuantity",rootData}))){
vErrors = vErrors === null ? validate236.errors : vErrors.concat(validate236.errors);
errors = vErrors.length;
}
}
let count0 = 0;
if(data["doseRange"] !== undefined){
count0++;
}
if(data["doseQuantity"] !== undefined){
count0++;
}
if(count0 > 1){
const err3 = {instancePath,schemaPath:"#/choices",keyword:"choices",params:{}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
let count1 = 0;
if(data["rateRatio"] !== undefined){
count1++;
}
if(data["rateRange"] !== undefined){
count1++;
}
if(data["rateQuantity"] !== undefined){
count1++;
}
if(count1 > 1){
const err4 = {instancePath,schemaPath:"#/choices",keyword:"choices",params:{}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
else {
const err5 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
validate453.errors = vErrors;
return errors === 0;
}


function validate438(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
for(const key0 in data){
if(!(func2.call(schema60.properties, key0))){
const err0 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err1 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(wrapper0.validate(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? wrapper0.validate.errors : vErrors.concat(wrapper0.validate.errors);
errors = vErrors.length;
}
}
}
else {
const err2 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.modifierExtension !== undefined){
let data3 = data.modifierExtension;
if(Array.isArray(data3)){
if(data3.length < 1){
const err3 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
const len1 = data3.length;
for(let i1=0; i1<len1; i1++){
if(!(wrapper0.validate(data3[i1], {instancePath:instancePath+"/modifierExtension/" + i1,parentData:data3,parentDataProperty:i1,rootData}))){
vErrors = vErrors === null ? wrapper0.validate.errors : vErrors.concat(wrapper0.validate.errors);
errors = vErrors.length;
}
}
}
else {
const err4 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.sequence !== undefined){
if(!(validate394(data.sequence, {instancePath:instancePath+"/sequence",parentData:data,parentDataProperty:"sequence",rootData}))){
vErrors = vErrors === null ? validate394.errors : vErrors.concat(validate394.errors);
errors = vErrors.length;
}
}
if(data._sequence !== undefined){
if(!(validate32(data._sequence, {instancePath:instancePath+"/_sequence",parentData:data,parentDataProperty:"_sequence",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.text !== undefined){
if(!(validate26(data.text, {instancePath:instancePath+"/text",parentData:data,parentDataProperty:"text",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._text !== undefined){
if(!(validate32(data._text, {instancePath:instancePath+"/_text",parentData:data,parentDataProperty:"_text",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.additionalInstruction !== undefined){
let data9 = data.additionalInstruction;
if(Array.isArray(data9)){
if(data9.length < 1){
const err5 = {instancePath:instancePath+"/additionalInstruction",schemaPath:"#/properties/additionalInstruction/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
const len2 = data9.length;
for(let i2=0; i2<len2; i2++){
if(!(validate106(data9[i2], {instancePath:instancePath+"/additionalInstruction/" + i2,parentData:data9,parentDataProperty:i2,rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
}
else {
const err6 = {instancePath:instancePath+"/additionalInstruction",schemaPath:"#/properties/additionalInstruction/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
if(data.patientInstruction !== undefined){
if(!(validate26(data.patientInstruction, {instancePath:instancePath+"/patientInstruction",parentData:data,parentDataProperty:"patientInstruction",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._patientInstruction !== undefined){
if(!(validate32(data._patientInstruction, {instancePath:instancePath+"/_patientInstruction",parentData:data,parentDataProperty:"_patientInstruction",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.timing !== undefined){
if(!(validate290(data.timing, {instancePath:instancePath+"/timing",parentData:data,parentDataProperty:"timing",rootData}))){
vErrors = vErrors === null ? validate290.errors : vErrors.concat(validate290.errors);
errors = vErrors.length;
}
}
if(data.asNeededBoolean !== undefined){
if(typeof data.asNeededBoolean !== "boolean"){
const err7 = {instancePath:instancePath+"/asNeededBoolean",schemaPath:"#/properties/asNeededBoolean/type",keyword:"type",params:{type: "boolean"}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
}
if(data._asNeededBoolean !== undefined){
if(!(validate32(data._asNeededBoolean, {instancePath:instancePath+"/_asNeededBoolean",parentData:data,parentDataProperty:"_asNeededBoolean",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.asNeededCodeableConcept !== undefined){
if(!(validate106(data.asNeededCodeableConcept, {instancePath:instancePath+"/asNeededCodeableConcept",parentData:data,parentDataProperty:"asNeededCodeableConcept",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.site !== undefined){
if(!(validate106(data.site, {instancePath:instancePath+"/site",parentData:data,parentDataProperty:"site",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.route !== undefined){
if(!(validate106(data.route, {instancePath:instancePath+"/route",parentData:data,parentDataProperty:"route",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.method !== undefined){
if(!(validate106(data.method, {instancePath:instancePath+"/method",parentData:data,parentDataProperty:"method",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.doseAndRate !== undefined){
let data20 = data.doseAndRate;
if(Array.isArray(data20)){
if(data20.length < 1){
const err8 = {instancePath:instancePath+"/doseAndRate",schemaPath:"#/properties/doseAndRate/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
const len3 = data20.length;
for(let i3=0; i3<len3; i3++){
if(!(validate453(data20[i3], {instancePath:instancePath+"/doseAndRate/" + i3,parentData:data20,parentDataProperty:i3,rootData}))){
vErrors = vErrors === null ? validate453.errors : vErrors.concat(validate453.errors);
errors = vErrors.length;
}
}
}
else {
const err9 = {instancePath:instancePath+"/doseAndRate",schemaPath:"#/properties/doseAndRate/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
}
if(data.maxDosePerPeriod !== undefined){
if(!(validate253(data.maxDosePerPeriod, {instancePath:instancePath+"/maxDosePerPeriod",parentData:data,parentDataProperty:"maxDosePerPeriod",rootData}))){
vErrors = vErrors === null ? validate253.errors : vErrors.concat(validate253.errors);
errors = vErrors.length;
}
}
if(data.maxDosePerAdministration !== undefined){
if(!(validate236(data.maxDosePerAdministration, {instancePath:instancePath+"/maxDosePerAdministration",parentData:data,parentDataProperty:"maxDosePerAdministration",rootData}))){
vErrors = vErrors === null ? validate236.errors : vErrors.concat(validate236.errors);
errors = vErrors.length;
}
}
if(data.maxDosePerLifetime !== undefined){
if(!(validate236(data.maxDosePerLifetime, {instancePath:instancePath+"/maxDosePerLifetime",parentData:data,parentDataProperty:"maxDosePerLifetime",rootData}))){
vErrors = vErrors === null ? validate236.errors : vErrors.concat(validate236.errors);
errors = vErrors.length;
}
}
let count0 = 0;
if(data["asNeededBoolean"] !== undefined){
count0++;
}
if(data["asNeededCodeableConcept"] !== undefined){
count0++;
}
if(count0 > 1){
const err10 = {instancePath,schemaPath:"#/choices",keyword:"choices",params:{}};
if(vErrors === null){
vErrors = [err10];
}
else {
vErrors.push(err10);
}
errors++;
}
}
else {
const err11 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err11];
}
else {
vErrors.push(err11);
}
errors++;
}
validate438.errors = vErrors;
return errors === 0;
}

const pattern3 = new RegExp("^(\\s*([0-9a-zA-Z\\+/=]){4}\\s*)+$", "u");
const pattern11 = new RegExp("^urn:oid:[0-2](\\.(0|[1-9][0-9]*))+$", "u");
const pattern16 = new RegExp("^urn:uuid:[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$", "u");

function validate28(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.url === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "url"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
for(const key0 in data){
if(!(func2.call(schema11.properties, key0))){
const err1 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err2 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(wrapper0.validate(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? wrapper0.validate.errors : vErrors.concat(wrapper0.validate.errors);
errors = vErrors.length;
}
}
}
else {
const err3 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.url !== undefined){
if(!(validate30(data.url, {instancePath:instancePath+"/url",parentData:data,parentDataProperty:"url",rootData}))){
vErrors = vErrors === null ? validate30.errors : vErrors.concat(validate30.errors);
errors = vErrors.length;
}
}
if(data._url !== undefined){
if(!(validate32(data._url, {instancePath:instancePath+"/_url",parentData:data,parentDataProperty:"_url",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueBase64Binary !== undefined){
let data5 = data.valueBase64Binary;
if(typeof data5 === "string"){
if(!pattern3.test(data5)){
const err4 = {instancePath:instancePath+"/valueBase64Binary",schemaPath:"#/properties/valueBase64Binary/pattern",keyword:"pattern",params:{pattern: "^(\\s*([0-9a-zA-Z\\+/=]){4}\\s*)+$"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
else {
const err5 = {instancePath:instancePath+"/valueBase64Binary",schemaPath:"#/properties/valueBase64Binary/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
if(data._valueBase64Binary !== undefined){
if(!(validate32(data._valueBase64Binary, {instancePath:instancePath+"/_valueBase64Binary",parentData:data,parentDataProperty:"_valueBase64Binary",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueBoolean !== undefined){
if(typeof data.valueBoolean !== "boolean"){
const err6 = {instancePath:instancePath+"/valueBoolean",schemaPath:"#/properties/valueBoolean/type",keyword:"type",params:{type: "boolean"}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
if(data._valueBoolean !== undefined){
if(!(validate32(data._valueBoolean, {instancePath:instancePath+"/_valueBoolean",parentData:data,parentDataProperty:"_valueBoolean",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueCanonical !== undefined){
let data9 = data.valueCanonical;
if(typeof data9 === "string"){
if(!pattern2.test(data9)){
const err7 = {instancePath:instancePath+"/valueCanonical",schemaPath:"#/properties/valueCanonical/pattern",keyword:"pattern",params:{pattern: "^\\S*$"}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
}
else {
const err8 = {instancePath:instancePath+"/valueCanonical",schemaPath:"#/properties/valueCanonical/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
}
if(data._valueCanonical !== undefined){
if(!(validate32(data._valueCanonical, {instancePath:instancePath+"/_valueCanonical",parentData:data,parentDataProperty:"_valueCanonical",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueCode !== undefined){
let data11 = data.valueCode;
if(typeof data11 === "string"){
if(!pattern5.test(data11)){
const err9 = {instancePath:instancePath+"/valueCode",schemaPath:"#/properties/valueCode/pattern",keyword:"pattern",params:{pattern: "^[^\\s]+(\\s[^\\s]+)*$"}};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
}
else {
const err10 = {instancePath:instancePath+"/valueCode",schemaPath:"#/properties/valueCode/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err10];
}
else {
vErrors.push(err10);
}
errors++;
}
}
if(data._valueCode !== undefined){
if(!(validate32(data._valueCode, {instancePath:instancePath+"/_valueCode",parentData:data,parentDataProperty:"_valueCode",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueDate !== undefined){
let data13 = data.valueDate;
if(typeof data13 === "string"){
if(!pattern6.test(data13)){
const err11 = {instancePath:instancePath+"/valueDate",schemaPath:"#/properties/valueDate/pattern",keyword:"pattern",params:{pattern: "^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1]))?)?$"}};
if(vErrors === null){
vErrors = [err11];
}
else {
vErrors.push(err11);
}
errors++;
}
}
else {
const err12 = {instancePath:instancePath+"/valueDate",schemaPath:"#/properties/valueDate/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err12];
}
else {
vErrors.push(err12);
}
errors++;
}
}
if(data._valueDate !== undefined){
if(!(validate32(data._valueDate, {instancePath:instancePath+"/_valueDate",parentData:data,parentDataProperty:"_valueDate",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueDateTime !== undefined){
let data15 = data.valueDateTime;
if(typeof data15 === "string"){
if(!pattern7.test(data15)){
const err13 = {instancePath:instancePath+"/valueDateTime",schemaPath:"#/properties/valueDateTime/pattern",keyword:"pattern",params:{pattern: "^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1])(T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00)))?)?)?$"}};
if(vErrors === null){
vErrors = [err13];
}
else {
vErrors.push(err13);
}
errors++;
}
}
else {
const err14 = {instancePath:instancePath+"/valueDateTime",schemaPath:"#/properties/valueDateTime/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err14];
}
else {
vErrors.push(err14);
}
errors++;
}
}
if(data._valueDateTime !== undefined){
if(!(validate32(data._valueDateTime, {instancePath:instancePath+"/_valueDateTime",parentData:data,parentDataProperty:"_valueDateTime",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueDecimal !== undefined){
let data17 = data.valueDecimal;
if(!((typeof data17 == "number") && (isFinite(data17)))){
const err15 = {instancePath:instancePath+"/valueDecimal",schemaPath:"#/properties/valueDecimal/type",keyword:"type",params:{type: "number"}};
if(vErrors === null){
vErrors = [err15];
}
else {
vErrors.push(err15);
}
errors++;
}
}
if(data._valueDecimal !== undefined){
if(!(validate32(data._valueDecimal, {instancePath:instancePath+"/_valueDecimal",parentData:data,parentDataProperty:"_valueDecimal",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueId !== undefined){
let data19 = data.valueId;
if(typeof data19 === "string"){
if(!pattern0.test(data19)){
const err16 = {instancePath:instancePath+"/valueId",schemaPath:"#/properties/valueId/pattern",keyword:"pattern",params:{pattern: "^[A-Za-z0-9\\-\\.]{1,64}$"}};
if(vErrors === null){
vErrors = [err16];
}
else {
vErrors.push(err16);
}
errors++;
}
}
else {
const err17 = {instancePath:instancePath+"/valueId",schemaPath:"#/properties/valueId/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err17];
}
else {
vErrors.push(err17);
}
errors++;
}
}
if(data._valueId !== undefined){
if(!(validate32(data._valueId, {instancePath:instancePath+"/_valueId",parentData:data,parentDataProperty:"_valueId",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueInstant !== undefined){
let data21 = data.valueInstant;
if(typeof data21 === "string"){
if(!pattern9.test(data21)){
const err18 = {instancePath:instancePath+"/valueInstant",schemaPath:"#/properties/valueInstant/pattern",keyword:"pattern",params:{pattern: "^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)-(0[1-9]|1[0-2])-(0[1-9]|[1-2][0-9]|3[0-1])T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00))$"}};
if(vErrors === null){
vErrors = [err18];
}
else {
vErrors.push(err18);
}
errors++;
}
}
else {
const err19 = {instancePath:instancePath+"/valueInstant",schemaPath:"#/properties/valueInstant/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err19];
}
else {
vErrors.push(err19);
}
errors++;
}
}
if(data._valueInstant !== undefined){
if(!(validate32(data._valueInstant, {instancePath:instancePath+"/_valueInstant",parentData:data,parentDataProperty:"_valueInstant",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueInteger !== undefined){
let data23 = data.valueInteger;
if(!((typeof data23 == "number") && (isFinite(data23)))){
const err20 = {instancePath:instancePath+"/valueInteger",schemaPath:"#/properties/valueInteger/type",keyword:"type",params:{type: "number"}};
if(vErrors === null){
vErrors = [err20];
}
else {
vErrors.push(err20);
}
errors++;
}
}
if(data._valueInteger !== undefined){
if(!(validate32(data._valueInteger, {instancePath:instancePath+"/_valueInteger",parentData:data,parentDataProperty:"_valueInteger",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueMarkdown !== undefined){
let data25 = data.valueMarkdown;
if(typeof data25 === "string"){
if(!pattern1.test(data25)){
const err21 = {instancePath:instancePath+"/valueMarkdown",schemaPath:"#/properties/valueMarkdown/pattern",keyword:"pattern",params:{pattern: "^[ \\r\\n\\t\\S]+$"}};
if(vErrors === null){
vErrors = [err21];
}
else {
vErrors.push(err21);
}
errors++;
}
}
else {
const err22 = {instancePath:instancePath+"/valueMarkdown",schemaPath:"#/properties/valueMarkdown/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err22];
}
else {
vErrors.push(err22);
}
errors++;
}
}
if(data._valueMarkdown !== undefined){
if(!(validate32(data._valueMarkdown, {instancePath:instancePath+"/_valueMarkdown",parentData:data,parentDataProperty:"_valueMarkdown",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueOid !== undefined){
let data27 = data.valueOid;
if(typeof data27 === "string"){
if(!pattern11.test(data27)){
const err23 = {instancePath:instancePath+"/valueOid",schemaPath:"#/properties/valueOid/pattern",keyword:"pattern",params:{pattern: "^urn:oid:[0-2](\\.(0|[1-9][0-9]*))+$"}};
if(vErrors === null){
vErrors = [err23];
}
else {
vErrors.push(err23);
}
errors++;
}
}
else {
const err24 = {instancePath:instancePath+"/valueOid",schemaPath:"#/properties/valueOid/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err24];
}
else {
vErrors.push(err24);
}
errors++;
}
}
if(data._valueOid !== undefined){
if(!(validate32(data._valueOid, {instancePath:instancePath+"/_valueOid",parentData:data,parentDataProperty:"_valueOid",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valuePositiveInt !== undefined){
let data29 = data.valuePositiveInt;
if(!((typeof data29 == "number") && (isFinite(data29)))){
const err25 = {instancePath:instancePath+"/valuePositiveInt",schemaPath:"#/properties/valuePositiveInt/type",keyword:"type",params:{type: "number"}};
if(vErrors === null){
vErrors = [err25];
}
else {
vErrors.push(err25);
}
errors++;
}
}
if(data._valuePositiveInt !== undefined){
if(!(validate32(data._valuePositiveInt, {instancePath:instancePath+"/_valuePositiveInt",parentData:data,parentDataProperty:"_valuePositiveInt",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueString !== undefined){
let data31 = data.valueString;
if(typeof data31 === "string"){
if(!pattern1.test(data31)){
const err26 = {instancePath:instancePath+"/valueString",schemaPath:"#/properties/valueString/pattern",keyword:"pattern",params:{pattern: "^[ \\r\\n\\t\\S]+$"}};
if(vErrors === null){
vErrors = [err26];
}
else {
vErrors.push(err26);
}
errors++;
}
}
else {
const err27 = {instancePath:instancePath+"/valueString",schemaPath:"#/properties/valueString/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err27];
}
else {
vErrors.push(err27);
}
errors++;
}
}
if(data._valueString !== undefined){
if(!(validate32(data._valueString, {instancePath:instancePath+"/_valueString",parentData:data,parentDataProperty:"_valueString",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueTime !== undefined){
let data33 = data.valueTime;
if(typeof data33 === "string"){
if(!pattern13.test(data33)){
const err28 = {instancePath:instancePath+"/valueTime",schemaPath:"#/properties/valueTime/pattern",keyword:"pattern",params:{pattern: "^([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?$"}};
if(vErrors === null){
vErrors = [err28];
}
else {
vErrors.push(err28);
}
errors++;
}
}
else {
const err29 = {instancePath:instancePath+"/valueTime",schemaPath:"#/properties/valueTime/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err29];
}
else {
vErrors.push(err29);
}
errors++;
}
}
if(data._valueTime !== undefined){
if(!(validate32(data._valueTime, {instancePath:instancePath+"/_valueTime",parentData:data,parentDataProperty:"_valueTime",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueUnsignedInt !== undefined){
let data35 = data.valueUnsignedInt;
if(!((typeof data35 == "number") && (isFinite(data35)))){
const err30 = {instancePath:instancePath+"/valueUnsignedInt",schemaPath:"#/properties/valueUnsignedInt/type",keyword:"type",params:{type: "number"}};
if(vErrors === null){
vErrors = [err30];
}
else {
vErrors.push(err30);
}
errors++;
}
}
if(data._valueUnsignedInt !== undefined){
if(!(validate32(data._valueUnsignedInt, {instancePath:instancePath+"/_valueUnsignedInt",parentData:data,parentDataProperty:"_valueUnsignedInt",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueUri !== undefined){
let data37 = data.valueUri;
if(typeof data37 === "string"){
if(!pattern2.test(data37)){
const err31 = {instancePath:instancePath+"/valueUri",schemaPath:"#/properties/valueUri/pattern",keyword:"pattern",params:{pattern: "^\\S*$"}};
if(vErrors === null){
vErrors = [err31];
}
else {
vErrors.push(err31);
}
errors++;
}
}
else {
const err32 = {instancePath:instancePath+"/valueUri",schemaPath:"#/properties/valueUri/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err32];
}
else {
vErrors.push(err32);
}
errors++;
}
}
if(data._valueUri !== undefined){
if(!(validate32(data._valueUri, {instancePath:instancePath+"/_valueUri",parentData:data,parentDataProperty:"_valueUri",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueUrl !== undefined){
let data39 = data.valueUrl;
if(typeof data39 === "string"){
if(!pattern2.test(data39)){
const err33 = {instancePath:instancePath+"/valueUrl",schemaPath:"#/properties/valueUrl/pattern",keyword:"pattern",params:{pattern: "^\\S*$"}};
if(vErrors === null){
vErrors = [err33];
}
else {
vErrors.push(err33);
}
errors++;
}
}
else {
const err34 = {instancePath:instancePath+"/valueUrl",schemaPath:"#/properties/valueUrl/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err34];
}
else {
vErrors.push(err34);
}
errors++;
}
}
if(data._valueUrl !== undefined){
if(!(validate32(data._valueUrl, {instancePath:instancePath+"/_valueUrl",parentData:data,parentDataProperty:"_valueUrl",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueUuid !== undefined){
let data41 = data.valueUuid;
if(typeof data41 === "string"){
if(!pattern16.test(data41)){
const err35 = {instancePath:instancePath+"/valueUuid",schemaPath:"#/properties/valueUuid/pattern",keyword:"pattern",params:{pattern: "^urn:uuid:[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$"}};
if(vErrors === null){
vErrors = [err35];
}
else {
vErrors.push(err35);
}
errors++;
}
}
else {
const err36 = {instancePath:instancePath+"/valueUuid",schemaPath:"#/properties/valueUuid/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err36];
}
else {
vErrors.push(err36);
}
errors++;
}
}
if(data._valueUuid !== undefined){
if(!(validate32(data._valueUuid, {instancePath:instancePath+"/_valueUuid",parentData:data,parentDataProperty:"_valueUuid",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueAddress !== undefined){
if(!(validate54(data.valueAddress, {instancePath:instancePath+"/valueAddress",parentData:data,parentDataProperty:"valueAddress",rootData}))){
vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
errors = vErrors.length;
}
}
if(data.valueAge !== undefined){
if(!(validate81(data.valueAge, {instancePath:instancePath+"/valueAge",parentData:data,parentDataProperty:"valueAge",rootData}))){
vErrors = vErrors === null ? validate81.errors : vErrors.concat(validate81.errors);
errors = vErrors.length;
}
}
if(data.valueAnnotation !== undefined){
if(!(validate95(data.valueAnnotation, {instancePath:instancePath+"/valueAnnotation",parentData:data,parentDataProperty:"valueAnnotation",rootData}))){
vErrors = vErrors === null ? validate95.errors : vErrors.concat(validate95.errors);
errors = vErrors.length;
}
}
if(data.valueAttachment !== undefined){
if(!(validate141(data.valueAttachment, {instancePath:instancePath+"/valueAttachment",parentData:data,parentDataProperty:"valueAttachment",rootData}))){
vErrors = vErrors === null ? validate141.errors : vErrors.concat(validate141.errors);
errors = vErrors.length;
}
}
if(data.valueCodeableConcept !== undefined){
if(!(validate106(data.valueCodeableConcept, {instancePath:instancePath+"/valueCodeableConcept",parentData:data,parentDataProperty:"valueCodeableConcept",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.valueCoding !== undefined){
if(!(validate108(data.valueCoding, {instancePath:instancePath+"/valueCoding",parentData:data,parentDataProperty:"valueCoding",rootData}))){
vErrors = vErrors === null ? validate108.errors : vErrors.concat(validate108.errors);
errors = vErrors.length;
}
}
if(data.valueContactPoint !== undefined){
if(!(validate165(data.valueContactPoint, {instancePath:instancePath+"/valueContactPoint",parentData:data,parentDataProperty:"valueContactPoint",rootData}))){
vErrors = vErrors === null ? validate165.errors : vErrors.concat(validate165.errors);
errors = vErrors.length;
}
}
if(data.valueCount !== undefined){
if(!(validate176(data.valueCount, {instancePath:instancePath+"/valueCount",parentData:data,parentDataProperty:"valueCount",rootData}))){
vErrors = vErrors === null ? validate176.errors : vErrors.concat(validate176.errors);
errors = vErrors.length;
}
}
if(data.valueDistance !== undefined){
if(!(validate188(data.valueDistance, {instancePath:instancePath+"/valueDistance",parentData:data,parentDataProperty:"valueDistance",rootData}))){
vErrors = vErrors === null ? validate188.errors : vErrors.concat(validate188.errors);
errors = vErrors.length;
}
}
if(data.valueDuration !== undefined){
if(!(validate200(data.valueDuration, {instancePath:instancePath+"/valueDuration",parentData:data,parentDataProperty:"valueDuration",rootData}))){
vErrors = vErrors === null ? validate200.errors : vErrors.concat(validate200.errors);
errors = vErrors.length;
}
}
if(data.valueHumanName !== undefined){
if(!(validate212(data.valueHumanName, {instancePath:instancePath+"/valueHumanName",parentData:data,parentDataProperty:"valueHumanName",rootData}))){
vErrors = vErrors === null ? validate212.errors : vErrors.concat(validate212.errors);
errors = vErrors.length;
}
}
if(data.valueIdentifier !== undefined){
if(!(validate103(data.valueIdentifier, {instancePath:instancePath+"/valueIdentifier",parentData:data,parentDataProperty:"valueIdentifier",rootData}))){
vErrors = vErrors === null ? validate103.errors : vErrors.concat(validate103.errors);
errors = vErrors.length;
}
}
if(data.valueMoney !== undefined){
if(!(validate228(data.valueMoney, {instancePath:instancePath+"/valueMoney",parentData:data,parentDataProperty:"valueMoney",rootData}))){
vErrors = vErrors === null ? validate228.errors : vErrors.concat(validate228.errors);
errors = vErrors.length;
}
}
if(data.valuePeriod !== undefined){
if(!(validate72(data.valuePeriod, {instancePath:instancePath+"/valuePeriod",parentData:data,parentDataProperty:"valuePeriod",rootData}))){
vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
errors = vErrors.length;
}
}
if(data.valueQuantity !== undefined){
if(!(validate236(data.valueQuantity, {instancePath:instancePath+"/valueQuantity",parentData:data,parentDataProperty:"valueQuantity",rootData}))){
vErrors = vErrors === null ? validate236.errors : vErrors.concat(validate236.errors);
errors = vErrors.length;
}
}
if(data.valueRange !== undefined){
if(!(validate248(data.valueRange, {instancePath:instancePath+"/valueRange",parentData:data,parentDataProperty:"valueRange",rootData}))){
vErrors = vErrors === null ? validate248.errors : vErrors.concat(validate248.errors);
errors = vErrors.length;
}
}
if(data.valueRatio !== undefined){
if(!(validate253(data.valueRatio, {instancePath:instancePath+"/valueRatio",parentData:data,parentDataProperty:"valueRatio",rootData}))){
vErrors = vErrors === null ? validate253.errors : vErrors.concat(validate253.errors);
errors = vErrors.length;
}
}
if(data.valueReference !== undefined){
if(!(validate97(data.valueReference, {instancePath:instancePath+"/valueReference",parentData:data,parentDataProperty:"valueReference",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
if(data.valueSampledData !== undefined){
if(!(validate259(data.valueSampledData, {instancePath:instancePath+"/valueSampledData",parentData:data,parentDataProperty:"valueSampledData",rootData}))){
vErrors = vErrors === null ? validate259.errors : vErrors.concat(validate259.errors);
errors = vErrors.length;
}
}
if(data.valueSignature !== undefined){
if(!(validate275(data.valueSignature, {instancePath:instancePath+"/valueSignature",parentData:data,parentDataProperty:"valueSignature",rootData}))){
vErrors = vErrors === null ? validate275.errors : vErrors.concat(validate275.errors);
errors = vErrors.length;
}
}
if(data.valueTiming !== undefined){
if(!(validate290(data.valueTiming, {instancePath:instancePath+"/valueTiming",parentData:data,parentDataProperty:"valueTiming",rootData}))){
vErrors = vErrors === null ? validate290.errors : vErrors.concat(validate290.errors);
errors = vErrors.length;
}
}
if(data.valueContactDetail !== undefined){
if(!(validate327(data.valueContactDetail, {instancePath:instancePath+"/valueContactDetail",parentData:data,parentDataProperty:"valueContactDetail",rootData}))){
vErrors = vErrors === null ? validate327.errors : vErrors.concat(validate327.errors);
errors = vErrors.length;
}
}
if(data.valueContributor !== undefined){
if(!(validate333(data.valueContributor, {instancePath:instancePath+"/valueContributor",parentData:data,parentDataProperty:"valueContributor",rootData}))){
vErrors = vErrors === null ? validate333.errors : vErrors.concat(validate333.errors);
errors = vErrors.length;
}
}
if(data.valueDataRequirement !== undefined){
if(!(validate340(data.valueDataRequirement, {instancePath:instancePath+"/valueDataRequirement",parentData:data,parentDataProperty:"valueDataRequirement",rootData}))){
vErrors = vErrors === null ? validate340.errors : vErrors.concat(validate340.errors);
errors = vErrors.length;
}
}
if(data.valueExpression !== undefined){
if(!(validate377(data.valueExpression, {instancePath:instancePath+"/valueExpression",parentData:data,parentDataProperty:"valueExpression",rootData}))){
vErrors = vErrors === null ? validate377.errors : vErrors.concat(validate377.errors);
errors = vErrors.length;
}
}
if(data.valueParameterDefinition !== undefined){
if(!(validate389(data.valueParameterDefinition, {instancePath:instancePath+"/valueParameterDefinition",parentData:data,parentDataProperty:"valueParameterDefinition",rootData}))){
vErrors = vErrors === null ? validate389.errors : vErrors.concat(validate389.errors);
errors = vErrors.length;
}
}
if(data.valueRelatedArtifact !== undefined){
if(!(validate404(data.valueRelatedArtifact, {instancePath:instancePath+"/valueRelatedArtifact",parentData:data,parentDataProperty:"valueRelatedArtifact",rootData}))){
vErrors = vErrors === null ? validate404.errors : vErrors.concat(validate404.errors);
errors = vErrors.length;
}
}
if(data.valueTriggerDefinition !== undefined){
if(!(validate418(data.valueTriggerDefinition, {instancePath:instancePath+"/valueTriggerDefinition",parentData:data,parentDataProperty:"valueTriggerDefinition",rootData}))){
vErrors = vErrors === null ? validate418.errors : vErrors.concat(validate418.errors);
errors = vErrors.length;
}
}
if(data.valueUsageContext !== undefined){
if(!(validate430(data.valueUsageContext, {instancePath:instancePath+"/valueUsageContext",parentData:data,parentDataProperty:"valueUsageContext",rootData}))){
vErrors = vErrors === null ? validate430.errors : vErrors.concat(validate430.errors);
errors = vErrors.length;
}
}
if(data.valueDosage !== undefined){
if(!(validate438(data.valueDosage, {instancePath:instancePath+"/valueDosage",parentData:data,parentDataProperty:"valueDosage",rootData}))){
vErrors = vErrors === null ? validate438.errors : vErrors.concat(validate438.errors);
errors = vErrors.length;
}
}
let count0 = 0;
if(data["valueBase64Binary"] !== undefined){
count0++;
}
if(data["valueBoolean"] !== undefined){
count0++;
}
if(data["valueCanonical"] !== undefined){
count0++;
}
if(data["valueCode"] !== undefined){
count0++;
}
if(data["valueDate"] !== undefined){
count0++;
}
if(data["valueDateTime"] !== undefined){
count0++;
}
if(data["valueDecimal"] !== undefined){
count0++;
}
if(data["valueId"] !== undefined){
count0++;
}
if(data["valueInstant"] !== undefined){
count0++;
}
if(data["valueInteger"] !== undefined){
count0++;
}
if(data["valueMarkdown"] !== undefined){
count0++;
}
if(data["valueOid"] !== undefined){
count0++;
}
if(data["valuePositiveInt"] !== undefined){
count0++;
}
if(data["valueString"] !== undefined){
count0++;
}
if(data["valueTime"] !== undefined){
count0++;
}
if(data["valueUnsignedInt"] !== undefined){
count0++;
}
if(data["valueUri"] !== undefined){
count0++;
}
if(data["valueUrl"] !== undefined){
count0++;
}
if(data["valueUuid"] !== undefined){
count0++;
}
if(data["valueAddress"] !== undefined){
count0++;
}
if(data["valueAge"] !== undefined){
count0++;
}
if(data["valueAnnotation"] !== undefined){
count0++;
}
if(data["valueAttachment"] !== undefined){
count0++;
}
if(data["valueCodeableConcept"] !== undefined){
count0++;
}
if(data["valueCoding"] !== undefined){
count0++;
}
if(data["valueContactPoint"] !== undefined){
count0++;
}
if(data["valueCount"] !== undefined){
count0++;
}
if(data["valueDistance"] !== undefined){
count0++;
}
if(data["valueDuration"] !== undefined){
count0++;
}
if(data["valueHumanName"] !== undefined){
count0++;
}
if(data["valueIdentifier"] !== undefined){
count0++;
}
if(data["valueMoney"] !== undefined){
count0++;
}
if(data["valuePeriod"] !== undefined){
count0++;
}
if(data["valueQuantity"] !== undefined){
count0++;
}
if(data["valueRange"] !== undefined){
count0++;
}
if(data["valueRatio"] !== undefined){
count0++;
}
if(data["valueReference"] !== undefined){
count0++;
}
if(data["valueSampledData"] !== undefined){
count0++;
}
if(data["valueSignature"] !== undefined){
count0++;
}
if(data["valueTiming"] !== undefined){
count0++;
}
if(data["valueContactDetail"] !== undefined){
count0++;
}
if(data["valueContributor"] !== undefined){
count0++;
}
if(data["valueDataRequirement"] !== undefined){
count0++;
}
if(data["valueExpression"] !== undefined){
count0++;
}
if(data["valueParameterDefinition"] !== undefined){
count0++;
}
if(data["valueRelatedArtifact"] !== undefined){
count0++;
}
if(data["valueTriggerDefinition"] !== undefined){
count0++;
}
if(data["valueUsageContext"] !== undefined){
count0++;
}
if(data["valueDosage"] !== undefined){
count0++;
}
if(count0 > 1){
const err37 = {instancePath,schemaPath:"#/choices",keyword:"choices",params:{}};
if(vErrors === null){
vErrors = [err37];
}
else {
vErrors.push(err37);
}
errors++;
}
}
else {
const err38 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err38];
}
else {
vErrors.push(err38);
}
errors++;
}
validate28.errors = vErrors;
return errors === 0;
}


function validate25(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
for(const key0 in data){
if(!(func2.call(schema9.properties, key0))){
const err0 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err1 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(validate28(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err2 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.versionId !== undefined){
if(!(validate23(data.versionId, {instancePath:instancePath+"/versionId",parentData:data,parentDataProperty:"versionId",rootData}))){
vErrors = vErrors === null ? validate23.errors : vErrors.concat(validate23.errors);
errors = vErrors.length;
}
}
if(data._versionId !== undefined){
if(!(validate32(data._versionId, {instancePath:instancePath+"/_versionId",parentData:data,parentDataProperty:"_versionId",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.lastUpdated !== undefined){
if(!(validate278(data.lastUpdated, {instancePath:instancePath+"/lastUpdated",parentData:data,parentDataProperty:"lastUpdated",rootData}))){
vErrors = vErrors === null ? validate278.errors : vErrors.concat(validate278.errors);
errors = vErrors.length;
}
}
if(data._lastUpdated !== undefined){
if(!(validate32(data._lastUpdated, {instancePath:instancePath+"/_lastUpdated",parentData:data,parentDataProperty:"_lastUpdated",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.source !== undefined){
if(!(validate30(data.source, {instancePath:instancePath+"/source",parentData:data,parentDataProperty:"source",rootData}))){
vErrors = vErrors === null ? validate30.errors : vErrors.concat(validate30.errors);
errors = vErrors.length;
}
}
if(data._source !== undefined){
if(!(validate32(data._source, {instancePath:instancePath+"/_source",parentData:data,parentDataProperty:"_source",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.profile !== undefined){
let data9 = data.profile;
if(Array.isArray(data9)){
if(data9.length < 1){
const err3 = {instancePath:instancePath+"/profile",schemaPath:"#/properties/profile/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
const len1 = data9.length;
for(let i1=0; i1<len1; i1++){
if(!(validate343(data9[i1], {instancePath:instancePath+"/profile/" + i1,parentData:data9,parentDataProperty:i1,rootData}))){
vErrors = vErrors === null ? validate343.errors : vErrors.concat(validate343.errors);
errors = vErrors.length;
}
}
}
else {
const err4 = {instancePath:instancePath+"/profile",schemaPath:"#/properties/profile/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.security !== undefined){
let data11 = data.security;
if(Array.isArray(data11)){
if(data11.length < 1){
const err5 = {instancePath:instancePath+"/security",schemaPath:"#/properties/security/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
const len2 = data11.length;
for(let i2=0; i2<len2; i2++){
if(!(validate108(data11[i2], {instancePath:instancePath+"/security/" + i2,parentData:data11,parentDataProperty:i2,rootData}))){
vErrors = vErrors === null ? validate108.errors : vErrors.concat(validate108.errors);
errors = vErrors.length;
}
}
}
else {
const err6 = {instancePath:instancePath+"/security",schemaPath:"#/properties/security/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
if(data.tag !== undefined){
let data13 = data.tag;
if(Array.isArray(data13)){
if(data13.length < 1){
const err7 = {instancePath:instancePath+"/tag",schemaPath:"#/properties/tag/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
const len3 = data13.length;
for(let i3=0; i3<len3; i3++){
if(!(validate108(data13[i3], {instancePath:instancePath+"/tag/" + i3,parentData:data13,parentDataProperty:i3,rootData}))){
vErrors = vErrors === null ? validate108.errors : vErrors.concat(validate108.errors);
errors = vErrors.length;
}
}
}
else {
const err8 = {instancePath:instancePath+"/tag",schemaPath:"#/properties/tag/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
}
}
else {
const err9 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
validate25.errors = vErrors;
return errors === 0;
}

const schema62 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"relation":{"$ref":"#/definitions/string"},"_relation":{"$ref":"#/definitions/Element"},"url":{"$ref":"#/definitions/uri"},"_url":{"$ref":"#/definitions/Element"}},"required":["relation","url"],"additionalProperties":false};

function validate487(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.relation === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "relation"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.url === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "url"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
for(const key0 in data){
if(!(((((((key0 === "id") || (key0 === "extension")) || (key0 === "modifierExtension")) || (key0 === "relation")) || (key0 === "_relation")) || (key0 === "url")) || (key0 === "_url"))){
const err2 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err3 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(validate28(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err4 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.modifierExtension !== undefined){
let data3 = data.modifierExtension;
if(Array.isArray(data3)){
if(data3.length < 1){
const err5 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
const len1 = data3.length;
for(let i1=0; i1<len1; i1++){
if(!(validate28(data3[i1], {instancePath:instancePath+"/modifierExtension/" + i1,parentData:data3,parentDataProperty:i1,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err6 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
if(data.relation !== undefined){
if(!(validate26(data.relation, {instancePath:instancePath+"/relation",parentData:data,parentDataProperty:"relation",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._relation !== undefined){
if(!(validate32(data._relation, {instancePath:instancePath+"/_relation",parentData:data,parentDataProperty:"_relation",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.url !== undefined){
if(!(validate30(data.url, {instancePath:instancePath+"/url",parentData:data,parentDataProperty:"url",rootData}))){
vErrors = vErrors === null ? validate30.errors : vErrors.concat(validate30.errors);
errors = vErrors.length;
}
}
if(data._url !== undefined){
if(!(validate32(data._url, {instancePath:instancePath+"/_url",parentData:data,parentDataProperty:"_url",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
}
else {
const err7 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
validate487.errors = vErrors;
return errors === 0;
}

const schema63 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"link":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Bundle_Link"}},"fullUrl":{"$ref":"#/definitions/uri"},"_fullUrl":{"$ref":"#/definitions/Element"},"resource":{"$ref":"#/definitions/ResourceList"},"search":{"$ref":"#/definitions/Bundle_Search"},"request":{"$ref":"#/definitions/Bundle_Request"},"response":{"$ref":"#/definitions/Bundle_Response"}},"additionalProperties":false};
const schema64 = {"type":"object","discriminator":{"propertyName":"resourceType"},"required":["resourceType"],"oneOf":[{"$ref":"#/definitions/Procedure"},{"$ref":"#/definitions/Condition"},{"$ref":"#/definitions/Observation"},{"$ref":"#/definitions/Specimen"},{"$ref":"#/definitions/ServiceRequest"},{"$ref":"#/definitions/DiagnosticReport"},{"$ref":"#/definitions/Device"},{"$ref":"#/definitions/MedicationAdministration"},{"$ref":"#/definitions/MedicationStatement"},{"$ref":"#/definitions/Media"},{"$ref":"#/definitions/Provenance"},{"$ref":"#/definitions/Appointment"},{"$ref":"#/definitions/Task"}]};
const schema65 = {"type":"object","properties":{"resourceType":{"const":"Procedure"},"id":{"$ref":"#/definitions/id"},"meta":{"$ref":"#/definitions/Meta"},"implicitRules":{"$ref":"#/definitions/uri"},"_implicitRules":{"$ref":"#/definitions/Element"},"language":{"$ref":"#/definitions/code"},"_language":{"$ref":"#/definitions/Element"},"text":{"$ref":"#/definitions/Narrative"},"contained":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/ResourceList"}},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"identifier":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Identifier"}},"instantiatesCanonical":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/canonical"}},"instantiatesUri":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/uri"}},"_instantiatesUri":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Element"}},"basedOn":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"partOf":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"status":{"enum":["preparation","in-progress","not-done","on-hold","stopped","completed","entered-in-error","unknown"]},"_status":{"$ref":"#/definitions/Element"},"statusReason":{"$ref":"#/definitions/CodeableConcept"},"category":{"$ref":"#/definitions/CodeableConcept"},"code":{"$ref":"#/definitions/CodeableConcept"},"subject":{"$ref":"#/definitions/Reference"},"encounter":{"$ref":"#/definitions/Reference"},"performedDateTime":{"type":"string","pattern":"^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1])(T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00)))?)?)?$"},"_performedDateTime":{"$ref":"#/definitions/Element"},"performedPeriod":{"$ref":"#/definitions/Period"},"performedString":{"type":"string","pattern":"^[ \\r\\n\\t\\S]+$"},"_performedString":{"$ref":"#/definitions/Element"},"performedAge":{"$ref":"#/definitions/Age"},"performedRange":{"$ref":"#/definitions/Range"},"recorder":{"$ref":"#/definitions/Reference"},"asserter":{"$ref":"#/definitions/Reference"},"performer":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Procedure_Performer"}},"location":{"$ref":"#/definitions/Reference"},"reasonCode":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"reasonReference":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"bodySite":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"outcome":{"$ref":"#/definitions/CodeableConcept"},"report":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"complication":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"complicationDetail":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"followUp":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"note":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Annotation"}},"focalDevice":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Procedure_FocalDevice"}},"usedReference":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"usedCode":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}}},"required":["resourceType","status","subject"],"choices":[{"element":"performed[x]","properties":["performedDateTime","performedPeriod","performedString","performedAge","performedRange"],"required":false}],"additionalProperties":false};
const schema66 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"status":{"enum":["generated","extensions","additional","empty"]},"_status":{"$ref":"#/definitions/Element"},"div":{"$ref":"#/definitions/xhtml"}},"required":["div","status"],"additionalProperties":false};
const schema67 = {"type":"string"};

function validate515(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(typeof data !== "string"){
const err0 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
validate515.errors = vErrors;
return errors === 0;
}


function validate511(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.div === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "div"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.status === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "status"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
for(const key0 in data){
if(!(((((key0 === "id") || (key0 === "extension")) || (key0 === "status")) || (key0 === "_status")) || (key0 === "div"))){
const err2 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err3 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(validate28(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err4 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.status !== undefined){
let data3 = data.status;
if(!((((data3 === "generated") || (data3 === "extensions")) || (data3 === "additional")) || (data3 === "empty"))){
const err5 = {instancePath:instancePath+"/status",schemaPath:"#/properties/status/enum",keyword:"enum",params:{allowedValues: schema66.properties.status.enum}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
if(data._status !== undefined){
if(!(validate32(data._status, {instancePath:instancePath+"/_status",parentData:data,parentDataProperty:"_status",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.div !== undefined){
if(!(validate515(data.div, {instancePath:instancePath+"/div",parentData:data,parentDataProperty:"div",rootData}))){
vErrors = vErrors === null ? validate515.errors : vErrors.concat(validate515.errors);
errors = vErrors.length;
}
}
}
else {
const err6 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
validate511.errors = vErrors;
return errors === 0;
}

const schema68 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"function":{"$ref":"#/definitions/CodeableConcept"},"actor":{"$ref":"#/definitions/Reference"},"onBehalfOf":{"$ref":"#/definitions/Reference"}},"required":["actor"],"additionalProperties":false};

function validate539(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.actor === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "actor"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
for(const key0 in data){
if(!((((((key0 === "id") || (key0 === "extension")) || (key0 === "modifierExtension")) || (key0 === "function")) || (key0 === "actor")) || (key0 === "onBehalfOf"))){
const err1 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err2 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(validate28(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err3 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.modifierExtension !== undefined){
let data3 = data.modifierExtension;
if(Array.isArray(data3)){
if(data3.length < 1){
const err4 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
const len1 = data3.length;
for(let i1=0; i1<len1; i1++){
if(!(validate28(data3[i1], {instancePath:instancePath+"/modifierExtension/" + i1,parentData:data3,parentDataProperty:i1,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err5 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
if(data.function !== undefined){
if(!(validate106(data.function, {instancePath:instancePath+"/function",parentData:data,parentDataProperty:"function",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.actor !== undefined){
if(!(validate97(data.actor, {instancePath:instancePath+"/actor",parentData:data,parentDataProperty:"actor",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
if(data.onBehalfOf !== undefined){
if(!(validate97(data.onBehalfOf, {instancePath:instancePath+"/onBehalfOf",parentData:data,parentDataProperty:"onBehalfOf",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
}
else {
const err6 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
validate539.errors = vErrors;
return errors === 0;
}

const schema69 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"action":{"$ref":"#/definitions/CodeableConcept"},"manipulated":{"$ref":"#/definitions/Reference"}},"required":["manipulated"],"additionalProperties":false};

function validate557(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.manipulated === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "manipulated"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
for(const key0 in data){
if(!(((((key0 === "id") || (key0 === "extension")) || (key0 === "modifierExtension")) || (key0 === "action")) || (key0 === "manipulated"))){
const err1 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err2 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(validate28(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err3 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.modifierExtension !== undefined){
let data3 = data.modifierExtension;
if(Array.isArray(data3)){
if(data3.length < 1){
const err4 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
const len1 = data3.length;
for(let i1=0; i1<len1; i1++){
if(!(validate28(data3[i1], {instancePath:instancePath+"/modifierExtension/" + i1,parentData:data3,parentDataProperty:i1,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err5 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
if(data.action !== undefined){
if(!(validate106(data.action, {instancePath:instancePath+"/action",parentData:data,parentDataProperty:"action",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.manipulated !== undefined){
if(!(validate97(data.manipulated, {instancePath:instancePath+"/manipulated",parentData:data,parentDataProperty:"manipulated",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
}
else {
const err6 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
validate557.errors = vErrors;
return errors === 0;
}

const wrapper40 = {validate: validate503};

function validate504(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.resourceType === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "resourceType"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.status === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "status"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(data.subject === undefined){
const err2 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "subject"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
for(const key0 in data){
if(!(func2.call(schema65.properties, key0))){
const err3 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.resourceType !== undefined){
if("Procedure" !== data.resourceType){
const err4 = {instancePath:instancePath+"/resourceType",schemaPath:"#/properties/resourceType/const",keyword:"const",params:{allowedValue: "Procedure"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate23(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate23.errors : vErrors.concat(validate23.errors);
errors = vErrors.length;
}
}
if(data.meta !== undefined){
if(!(validate25(data.meta, {instancePath:instancePath+"/meta",parentData:data,parentDataProperty:"meta",rootData}))){
vErrors = vErrors === null ? validate25.errors : vErrors.concat(validate25.errors);
errors = vErrors.length;
}
}
if(data.implicitRules !== undefined){
if(!(validate30(data.implicitRules, {instancePath:instancePath+"/implicitRules",parentData:data,parentDataProperty:"implicitRules",rootData}))){
vErrors = vErrors === null ? validate30.errors : vErrors.concat(validate30.errors);
errors = vErrors.length;
}
}
if(data._implicitRules !== undefined){
if(!(validate32(data._implicitRules, {instancePath:instancePath+"/_implicitRules",parentData:data,parentDataProperty:"_implicitRules",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.language !== undefined){
if(!(validate91(data.language, {instancePath:instancePath+"/language",parentData:data,parentDataProperty:"language",rootData}))){
vErrors = vErrors === null ? validate91.errors : vErrors.concat(validate91.errors);
errors = vErrors.length;
}
}
if(data._language !== undefined){
if(!(validate32(data._language, {instancePath:instancePath+"/_language",parentData:data,parentDataProperty:"_language",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.text !== undefined){
if(!(validate511(data.text, {instancePath:instancePath+"/text",parentData:data,parentDataProperty:"text",rootData}))){
vErrors = vErrors === null ? validate511.errors : vErrors.concat(validate511.errors);
errors = vErrors.length;
}
}
if(data.contained !== undefined){
let data8 = data.contained;
if(Array.isArray(data8)){
if(data8.length < 1){
const err5 = {instancePath:instancePath+"/contained",schemaPath:"#/properties/contained/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
const len0 = data8.length;
for(let i0=0; i0<len0; i0++){
if(!(wrapper40.validate(data8[i0], {instancePath:instancePath+"/contained/" + i0,parentData:data8,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? wrapper40.validate.errors : vErrors.concat(wrapper40.validate.errors);
errors = vErrors.length;
}
}
}
else {
const err6 = {instancePath:instancePath+"/contained",schemaPath:"#/properties/contained/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
if(data.extension !== undefined){
let data10 = data.extension;
if(Array.isArray(data10)){
if(data10.length < 1){
const err7 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
const len1 = data10.length;
for(let i1=0; i1<len1; i1++){
if(!(validate28(data10[i1], {instancePath:instancePath+"/extension/" + i1,parentData:data10,parentDataProperty:i1,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err8 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
}
if(data.modifierExtension !== undefined){
let data12 = data.modifierExtension;
if(Array.isArray(data12)){
if(data12.length < 1){
const err9 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
const len2 = data12.length;
for(let i2=0; i2<len2; i2++){
if(!(validate28(data12[i2], {instancePath:instancePath+"/modifierExtension/" + i2,parentData:data12,parentDataProperty:i2,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err10 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err10];
}
else {
vErrors.push(err10);
}
errors++;
}
}
if(data.identifier !== undefined){
let data14 = data.identifier;
if(Array.isArray(data14)){
if(data14.length < 1){
const err11 = {instancePath:instancePath+"/identifier",schemaPath:"#/properties/identifier/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err11];
}
else {
vErrors.push(err11);
}
errors++;
}
const len3 = data14.length;
for(let i3=0; i3<len3; i3++){
if(!(validate103(data14[i3], {instancePath:instancePath+"/identifier/" + i3,parentData:data14,parentDataProperty:i3,rootData}))){
vErrors = vErrors === null ? validate103.errors : vErrors.concat(validate103.errors);
errors = vErrors.length;
}
}
}
else {
const err12 = {instancePath:instancePath+"/identifier",schemaPath:"#/properties/identifier/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err12];
}
else {
vErrors.push(err12);
}
errors++;
}
}
if(data.instantiatesCanonical !== undefined){
let data16 = data.instantiatesCanonical;
if(Array.isArray(data16)){
if(data16.length < 1){
const err13 = {instancePath:instancePath+"/instantiatesCanonical",schemaPath:"#/properties/instantiatesCanonical/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err13];
}
else {
vErrors.push(err13);
}
errors++;
}
const len4 = data16.length;
for(let i4=0; i4<len4; i4++){
if(!(validate343(data16[i4], {instancePath:instancePath+"/instantiatesCanonical/" + i4,parentData:data16,parentDataProperty:i4,rootData}))){
vErrors = vErrors === null ? validate343.errors : vErrors.concat(validate343.errors);
errors = vErrors.length;
}
}
}
else {
const err14 = {instancePath:instancePath+"/instantiatesCanonical",schemaPath:"#/properties/instantiatesCanonical/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err14];
}
else {
vErrors.push(err14);
}
errors++;
}
}
if(data.instantiatesUri !== undefined){
let data18 = data.instantiatesUri;
if(Array.isArray(data18)){
if(data18.length < 1){
const err15 = {instancePath:instancePath+"/instantiatesUri",schemaPath:"#/properties/instantiatesUri/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err15];
}
else {
vErrors.push(err15);
}
errors++;
}
const len5 = data18.length;
for(let i5=0; i5<len5; i5++){
if(!(validate30(data18[i5], {instancePath:instancePath+"/instantiatesUri/" + i5,parentData:data18,parentDataProperty:i5,rootData}))){
vErrors = vErrors === null ? validate30.errors : vErrors.concat(validate30.errors);
errors = vErrors.length;
}
}
}
else {
const err16 = {instancePath:instancePath+"/instantiatesUri",schemaPath:"#/properties/instantiatesUri/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err16];
}
else {
vErrors.push(err16);
}
errors++;
}
}
if(data._instantiatesUri !== undefined){
let data20 = data._instantiatesUri;
if(Array.isArray(data20)){
if(data20.length < 1){
const err17 = {instancePath:instancePath+"/_instantiatesUri",schemaPath:"#/properties/_instantiatesUri/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err17];
}
else {
vErrors.push(err17);
}
errors++;
}
const len6 = data20.length;
for(let i6=0; i6<len6; i6++){
if(!(validate32(data20[i6], {instancePath:instancePath+"/_instantiatesUri/" + i6,parentData:data20,parentDataProperty:i6,rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
}
else {
const err18 = {instancePath:instancePath+"/_instantiatesUri",schemaPath:"#/properties/_instantiatesUri/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err18];
}
else {
vErrors.push(err18);
}
errors++;
}
}
if(data.basedOn !== undefined){
let data22 = data.basedOn;
if(Array.isArray(data22)){
if(data22.length < 1){
const err19 = {instancePath:instancePath+"/basedOn",schemaPath:"#/properties/basedOn/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err19];
}
else {
vErrors.push(err19);
}
errors++;
}
const len7 = data22.length;
for(let i7=0; i7<len7; i7++){
if(!(validate97(data22[i7], {instancePath:instancePath+"/basedOn/" + i7,parentData:data22,parentDataProperty:i7,rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
}
else {
const err20 = {instancePath:instancePath+"/basedOn",schemaPath:"#/properties/basedOn/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err20];
}
else {
vErrors.push(err20);
}
errors++;
}
}
if(data.partOf !== undefined){
let data24 = data.partOf;
if(Array.isArray(data24)){
if(data24.length < 1){
const err21 = {instancePath:instancePath+"/partOf",schemaPath:"#/properties/partOf/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err21];
}
else {
vErrors.push(err21);
}
errors++;
}
const len8 = data24.length;
for(let i8=0; i8<len8; i8++){
if(!(validate97(data24[i8], {instancePath:instancePath+"/partOf/" + i8,parentData:data24,parentDataProperty:i8,rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
}
else {
const err22 = {instancePath:instancePath+"/partOf",schemaPath:"#/properties/partOf/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err22];
}
else {
vErrors.push(err22);
}
errors++;
}
}
if(data.status !== undefined){
let data26 = data.status;
if(!((((((((data26 === "preparation") || (data26 === "in-progress")) || (data26 === "not-done")) || (data26 === "on-hold")) || (data26 === "stopped")) || (data26 === "completed")) || (data26 === "entered-in-error")) || (data26 === "unknown"))){
const err23 = {instancePath:instancePath+"/status",schemaPath:"#/properties/status/enum",keyword:"enum",params:{allowedValues: schema65.properties.status.enum}};
if(vErrors === null){
vErrors = [err23];
}
else {
vErrors.push(err23);
}
errors++;
}
}
if(data._status !== undefined){
if(!(validate32(data._status, {instancePath:instancePath+"/_status",parentData:data,parentDataProperty:"_status",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.statusReason !== undefined){
if(!(validate106(data.statusReason, {instancePath:instancePath+"/statusReason",parentData:data,parentDataProperty:"statusReason",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.category !== undefined){
if(!(validate106(data.category, {instancePath:instancePath+"/category",parentData:data,parentDataProperty:"category",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.code !== undefined){
if(!(validate106(data.code, {instancePath:instancePath+"/code",parentData:data,parentDataProperty:"code",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.subject !== undefined){
if(!(validate97(data.subject, {instancePath:instancePath+"/subject",parentData:data,parentDataProperty:"subject",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
if(data.encounter !== undefined){
if(!(validate97(data.encounter, {instancePath:instancePath+"/encounter",parentData:data,parentDataProperty:"encounter",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
if(data.performedDateTime !== undefined){
let data33 = data.performedDateTime;
if(typeof data33 === "string"){
if(!pattern7.test(data33)){
const err24 = {instancePath:instancePath+"/performedDateTime",schemaPath:"#/properties/performedDateTime/pattern",keyword:"pattern",params:{pattern: "^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1])(T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00)))?)?)?$"}};
if(vErrors === null){
vErrors = [err24];
}
else {
vErrors.push(err24);
}
errors++;
}
}
else {
const err25 = {instancePath:instancePath+"/performedDateTime",schemaPath:"#/properties/performedDateTime/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err25];
}
else {
vErrors.push(err25);
}
errors++;
}
}
if(data._performedDateTime !== undefined){
if(!(validate32(data._performedDateTime, {instancePath:instancePath+"/_performedDateTime",parentData:data,parentDataProperty:"_performedDateTime",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.performedPeriod !== undefined){
if(!(validate72(data.performedPeriod, {instancePath:instancePath+"/performedPeriod",parentData:data,parentDataProperty:"performedPeriod",rootData}))){
vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
errors = vErrors.length;
}
}
if(data.performedString !== undefined){
let data36 = data.performedString;
if(typeof data36 === "string"){
if(!pattern1.test(data36)){
const err26 = {instancePath:instancePath+"/performedString",schemaPath:"#/properties/performedString/pattern",keyword:"pattern",params:{pattern: "^[ \\r\\n\\t\\S]+$"}};
if(vErrors === null){
vErrors = [err26];
}
else {
vErrors.push(err26);
}
errors++;
}
}
else {
const err27 = {instancePath:instancePath+"/performedString",schemaPath:"#/properties/performedString/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err27];
}
else {
vErrors.push(err27);
}
errors++;
}
}
if(data._performedString !== undefined){
if(!(validate32(data._performedString, {instancePath:instancePath+"/_performedString",parentData:data,parentDataProperty:"_performedString",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.performedAge !== undefined){
if(!(validate81(data.performedAge, {instancePath:instancePath+"/performedAge",parentData:data,parentDataProperty:"performedAge",rootData}))){
vErrors = vErrors === null ? validate81.errors : vErrors.concat(validate81.errors);
errors = vErrors.length;
}
}
if(data.performedRange !== undefined){
if(!(validate248(data.performedRange, {instancePath:instancePath+"/performedRange",parentData:data,parentDataProperty:"performedRange",rootData}))){
vErrors = vErrors === null ? validate248.errors : vErrors.concat(validate248.errors);
errors = vErrors.length;
}
}
if(data.recorder !== undefined){
if(!(validate97(data.recorder, {instancePath:instancePath+"/recorder",parentData:data,parentDataProperty:"recorder",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
if(data.asserter !== undefined){
if(!(validate97(data.asserter, {instancePath:instancePath+"/asserter",parentData:data,parentDataProperty:"asserter",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
if(data.performer !== undefined){
let data42 = data.performer;
if(Array.isArray(data42)){
if(data42.length < 1){
const err28 = {instancePath:instancePath+"/performer",schemaPath:"#/properties/performer/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err28];
}
else {
vErrors.push(err28);
}
errors++;
}
const len9 = data42.length;
for(let i9=0; i9<len9; i9++){
if(!(validate539(data42[i9], {instancePath:instancePath+"/performer/" + i9,parentData:data42,parentDataProperty:i9,rootData}))){
vErrors = vErrors === null ? validate539.errors : vErrors.concat(validate539.errors);
errors = vErrors.length;
}
}
}
else {
const err29 = {instancePath:instancePath+"/performer",schemaPath:"#/properties/performer/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err29];
}
else {
vErrors.push(err29);
}
errors++;
}
}
if(data.location !== undefined){
if(!(validate97(data.location, {instancePath:instancePath+"/location",parentData:data,parentDataProperty:"location",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
if(data.reasonCode !== undefined){
let data45 = data.reasonCode;
if(Array.isArray(data45)){
if(data45.length < 1){
const err30 = {instancePath:instancePath+"/reasonCode",schemaPath:"#/properties/reasonCode/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err30];
}
else {
vErrors.push(err30);
}
errors++;
}
const len10 = data45.length;
for(let i10=0; i10<len10; i10++){
if(!(validate106(data45[i10], {instancePath:instancePath+"/reasonCode/" + i10,parentData:data45,parentDataProperty:i10,rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
}
else {
const err31 = {instancePath:instancePath+"/reasonCode",schemaPath:"#/properties/reasonCode/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err31];
}
else {
vErrors.push(err31);
}
errors++;
}
}
if(data.reasonReference !== undefined){
let data47 = data.reasonReference;
if(Array.isArray(data47)){
if(data47.length < 1){
const err32 = {instancePath:instancePath+"/reasonReference",schemaPath:"#/properties/reasonReference/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err32];
}
else {
vErrors.push(err32);
}
errors++;
}
const len11 = data47.length;
for(let i11=0; i11<len11; i11++){
if(!(validate97(data47[i11], {instancePath:instancePath+"/reasonReference/" + i11,parentData:data47,parentDataProperty:i11,rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
}
else {
const err33 = {instancePath:instancePath+"/reasonReference",schemaPath:"#/properties/reasonReference/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err33];
}
else {
vErrors.push(err33);
}
errors++;
}
}
if(data.bodySite !== undefined){
let data49 = data.bodySite;
if(Array.isArray(data49)){
if(data49.length < 1){
const err34 = {instancePath:instancePath+"/bodySite",schemaPath:"#/properties/bodySite/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err34];
}
else {
vErrors.push(err34);
}
errors++;
}
const len12 = data49.length;
for(let i12=0; i12<len12; i12++){
if(!(validate106(data49[i12], {instancePath:instancePath+"/bodySite/" + i12,parentData:data49,parentDataProperty:i12,rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
}
else {
const err35 = {instancePath:instancePath+"/bodySite",schemaPath:"#/properties/bodySite/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err35];
}
else {
vErrors.push(err35);
}
errors++;
}
}
if(data.outcome !== undefined){
if(!(validate106(data.outcome, {instancePath:instancePath+"/outcome",parentData:data,parentDataProperty:"outcome",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.report !== undefined){
let data52 = data.report;
if(Array.isArray(data52)){
if(data52.length < 1){
const err36 = {instancePath:instancePath+"/report",schemaPath:"#/properties/report/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err36];
}
else {
vErrors.push(err36);
}
errors++;
}
const len13 = data52.length;
for(let i13=0; i13<len13; i13++){
if(!(validate97(data52[i13], {instancePath:instancePath+"/report/" + i13,parentData:data52,parentDataProperty:i13,rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
}
else {
const err37 = {instancePath:instancePath+"/report",schemaPath:"#/properties/report/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err37];
}
else {
vErrors.push(err37);
}
errors++;
}
}
if(data.complication !== undefined){
let data54 = data.complication;
if(Array.isArray(data54)){
if(data54.length < 1){
const err38 = {instancePath:instancePath+"/complication",schemaPath:"#/properties/complication/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err38];
}
else {
vErrors.push(err38);
}
errors++;
}
const len14 = data54.length;
for(let i14=0; i14<len14; i14++){
if(!(validate106(data54[i14], {instancePath:instancePath+"/complication/" + i14,parentData:data54,parentDataProperty:i14,rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
}
else {
const err39 = {instancePath:instancePath+"/complication",schemaPath:"#/properties/complication/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err39];
}
else {
vErrors.push(err39);
}
errors++;
}
}
if(data.complicationDetail !== undefined){
let data56 = data.complicationDetail;
if(Array.isArray(data56)){
if(data56.length < 1){
const err40 = {instancePath:instancePath+"/complicationDetail",schemaPath:"#/properties/complicationDetail/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err40];
}
else {
vErrors.push(err40);
}
errors++;
}
const len15 = data56.length;
for(let i15=0; i15<len15; i15++){
if(!(validate97(data56[i15], {instancePath:instancePath+"/complicationDetail/" + i15,parentData:data56,parentDataProperty:i15,rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
}
else {
const err41 = {instancePath:instancePath+"/complicationDetail",schemaPath:"#/properties/complicationDetail/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err41];
}
else {
vErrors.push(err41);
}
errors++;
}
}
if(data.followUp !== undefined){
let data58 = data.followUp;
if(Array.isArray(data58)){
if(data58.length < 1){
const err42 = {instancePath:instancePath+"/followUp",schemaPath:"#/properties/followUp/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err42];
}
else {
vErrors.push(err42);
}
errors++;
}
const len16 = data58.length;
for(let i16=0; i16<len16; i16++){
if(!(validate106(data58[i16], {instancePath:instancePath+"/followUp/" + i16,parentData:data58,parentDataProperty:i16,rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
}
else {
const err43 = {instancePath:instancePath+"/followUp",schemaPath:"#/properties/followUp/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err43];
}
else {
vErrors.push(err43);
}
errors++;
}
}
if(data.note !== undefined){
let data60 = data.note;
if(Array.isArray(data60)){
if(data60.length < 1){
const err44 = {instancePath:instancePath+"/note",schemaPath:"#/properties/note/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err44];
}
else {
vErrors.push(err44);
}
errors++;
}
const len17 = data60.length;
for(let i17=0; i17<len17; i17++){
if(!(validate95(data60[i17], {instancePath:instancePath+"/note/" + i17,parentData:data60,parentDataProperty:i17,rootData}))){
vErrors = vErrors === null ? validate95.errors : vErrors.concat(validate95.errors);
errors = vErrors.length;
}
}
}
else {
const err45 = {instancePath:instancePath+"/note",schemaPath:"#/properties/note/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err45];
}
else {
vErrors.push(err45);
}
errors++;
}
}
if(data.focalDevice !== undefined){
let data62 = data.focalDevice;
if(Array.isArray(data62)){
if(data62.length < 1){
const err46 = {instancePath:instancePath+"/focalDevice",schemaPath:"#/properties/focalDevice/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err46];
}
else {
vErrors.push(err46);
}
errors++;
}
const len18 = data62.length;
for(let i18=0; i18<len18; i18++){
if(!(validate557(data62[i18], {instancePath:instancePath+"/focalDevice/" + i18,parentData:data62,parentDataProperty:i18,rootData}))){
vErrors = vErrors === null ? validate557.errors : vErrors.concat(validate557.errors);
errors = vErrors.length;
}
}
}
else {
const err47 = {instancePath:instancePath+"/focalDevice",schemaPath:"#/properties/focalDevice/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err47];
}
else {
vErrors.push(err47);
}
errors++;
}
}
if(data.usedReference !== undefined){
let data64 = data.usedReference;
if(Array.isArray(data64)){
if(data64.length < 1){
const err48 = {instancePath:instancePath+"/usedReference",schemaPath:"#/properties/usedReference/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err48];
}
else {
vErrors.push(err48);
}
errors++;
}
const len19 = data64.length;
for(let i19=0; i19<len19; i19++){
if(!(validate97(data64[i19], {instancePath:instancePath+"/usedReference/" + i19,parentData:data64,parentDataProperty:i19,rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
}
else {
const err49 = {instancePath:instancePath+"/usedReference",schemaPath:"#/properties/usedReference/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err49];
}
else {
vErrors.push(err49);
}
errors++;
}
}
if(data.usedCode !== undefined){
let data66 = data.usedCode;
if(Array.isArray(data66)){
if(data66.length < 1){
const err50 = {instancePath:instancePath+"/usedCode",schemaPath:"#/properties/usedCode/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err50];
}
else {
vErrors.push(err50);
}
errors++;
}
const len20 = data66.length;
for(let i20=0; i20<len20; i20++){
if(!(validate106(data66[i20], {instancePath:instancePath+"/usedCode/" + i20,parentData:data66,parentDataProperty:i20,rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
}
else {
const err51 = {instancePath:instancePath+"/usedCode",schemaPath:"#/properties/usedCode/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err51];
}
else {
vErrors.push(err51);
}
errors++;
}
}
let count0 = 0;
if(data["performedDateTime"] !== undefined){
count0++;
}
if(data["performedPeriod"] !== undefined){
count0++;
}
if(data["performedString"] !== undefined){
count0++;
}
if(data["performedAge"] !== undefined){
count0++;
}
if(data["performedRange"] !== undefined){
count0++;
}
if(count0 > 1){
const err52 = {instancePath,schemaPath:"#/choices",keyword:"choices",params:{}};
if(vErrors === null){
vErrors = [err52];
}
else {
vErrors.push(err52);
}
errors++;
}
}
else {
const err53 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err53];
}
else {
vErrors.push(err53);
}
errors++;
}
validate504.errors = vErrors;
return errors === 0;
}

const schema70 = {"type":"object","properties":{"resourceType":{"const":"Condition"},"id":{"$ref":"#/definitions/id"},"meta":{"$ref":"#/definitions/Meta"},"implicitRules":{"$ref":"#/definitions/uri"},"_implicitRules":{"$ref":"#/definitions/Element"},"language":{"$ref":"#/definitions/code"},"_language":{"$ref":"#/definitions/Element"},"text":{"$ref":"#/definitions/Narrative"},"contained":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/ResourceList"}},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"identifier":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Identifier"}},"clinicalStatus":{"$ref":"#/definitions/CodeableConcept","type":"object","properties":{"coding":{"type":"array","contains":{"anyOf":[{"type":"object","properties":{"system":{"const":"http://terminology.hl7.org/CodeSystem/condition-clinical"},"code":{"enum":["active","recurrence","relapse","inactive","remission","resolved"]}},"required":["system","code"]}]}}},"required":["coding"]},"verificationStatus":{"$ref":"#/definitions/CodeableConcept","type":"object","properties":{"coding":{"type":"array","contains":{"anyOf":[{"type":"object","properties":{"system":{"const":"http://terminology.hl7.org/CodeSystem/condition-ver-status"},"code":{"enum":["unconfirmed","provisional","differential","confirmed","refuted","entered-in-error"]}},"required":["system","code"]}]}}},"required":["coding"]},"category":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"severity":{"$ref":"#/definitions/CodeableConcept"},"code":{"$ref":"#/definitions/CodeableConcept"},"bodySite":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"subject":{"$ref":"#/definitions/Reference"},"encounter":{"$ref":"#/definitions/Reference"},"onsetDateTime":{"type":"string","pattern":"^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1])(T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00)))?)?)?$"},"_onsetDateTime":{"$ref":"#/definitions/Element"},"onsetAge":{"$ref":"#/definitions/Age"},"onsetPeriod":{"$ref":"#/definitions/Period"},"onsetRange":{"$ref":"#/definitions/Range"},"onsetString":{"type":"string","pattern":"^[ \\r\\n\\t\\S]+$"},"_onsetString":{"$ref":"#/definitions/Element"},"abatementDateTime":{"type":"string","pattern":"^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1])(T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00)))?)?)?$"},"_abatementDateTime":{"$ref":"#/definitions/Element"},"abatementAge":{"$ref":"#/definitions/Age"},"abatementPeriod":{"$ref":"#/definitions/Period"},"abatementRange":{"$ref":"#/definitions/Range"},"abatementString":{"type":"string","pattern":"^[ \\r\\n\\t\\S]+$"},"_abatementString":{"$ref":"#/definitions/Element"},"recordedDate":{"$ref":"#/definitions/dateTime"},"_recordedDate":{"$ref":"#/definitions/Element"},"recorder":{"$ref":"#/definitions/Reference"},"asserter":{"$ref":"#/definitions/Reference"},"stage":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Condition_Stage"}},"evidence":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Condition_Evidence"}},"note":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Annotation"}}},"required":["resourceType","subject"],"choices":[{"element":"onset[x]","properties":["onsetDateTime","onsetAge","onsetPeriod","onsetRange","onsetString"],"required":false},{"element":"abatement[x]","properties":["abatementDateTime","abatementAge","abatementPeriod","abatementRange","abatementString"],"required":false}],"additionalProperties":false};
const schema71 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"summary":{"$ref":"#/definitions/CodeableConcept"},"assessment":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"type":{"$ref":"#/definitions/CodeableConcept"}},"additionalProperties":false};

function validate599(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
for(const key0 in data){
if(!((((((key0 === "id") || (key0 === "extension")) || (key0 === "modifierExtension")) || (key0 === "summary")) || (key0 === "assessment")) || (key0 === "type"))){
const err0 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err1 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(validate28(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err2 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.modifierExtension !== undefined){
let data3 = data.modifierExtension;
if(Array.isArray(data3)){
if(data3.length < 1){
const err3 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
const len1 = data3.length;
for(let i1=0; i1<len1; i1++){
if(!(validate28(data3[i1], {instancePath:instancePath+"/modifierExtension/" + i1,parentData:data3,parentDataProperty:i1,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err4 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.summary !== undefined){
if(!(validate106(data.summary, {instancePath:instancePath+"/summary",parentData:data,parentDataProperty:"summary",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.assessment !== undefined){
let data6 = data.assessment;
if(Array.isArray(data6)){
if(data6.length < 1){
const err5 = {instancePath:instancePath+"/assessment",schemaPath:"#/properties/assessment/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
const len2 = data6.length;
for(let i2=0; i2<len2; i2++){
if(!(validate97(data6[i2], {instancePath:instancePath+"/assessment/" + i2,parentData:data6,parentDataProperty:i2,rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
}
else {
const err6 = {instancePath:instancePath+"/assessment",schemaPath:"#/properties/assessment/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
if(data.type !== undefined){
if(!(validate106(data.type, {instancePath:instancePath+"/type",parentData:data,parentDataProperty:"type",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
}
else {
const err7 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
validate599.errors = vErrors;
return errors === 0;
}

const schema72 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"code":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"detail":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}}},"additionalProperties":false};

function validate607(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
for(const key0 in data){
if(!(((((key0 === "id") || (key0 === "extension")) || (key0 === "modifierExtension")) || (key0 === "code")) || (key0 === "detail"))){
const err0 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err1 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(validate28(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err2 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.modifierExtension !== undefined){
let data3 = data.modifierExtension;
if(Array.isArray(data3)){
if(data3.length < 1){
const err3 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
const len1 = data3.length;
for(let i1=0; i1<len1; i1++){
if(!(validate28(data3[i1], {instancePath:instancePath+"/modifierExtension/" + i1,parentData:data3,parentDataProperty:i1,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err4 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.code !== undefined){
let data5 = data.code;
if(Array.isArray(data5)){
if(data5.length < 1){
const err5 = {instancePath:instancePath+"/code",schemaPath:"#/properties/code/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
const len2 = data5.length;
for(let i2=0; i2<len2; i2++){
if(!(validate106(data5[i2], {instancePath:instancePath+"/code/" + i2,parentData:data5,parentDataProperty:i2,rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
}
else {
const err6 = {instancePath:instancePath+"/code",schemaPath:"#/properties/code/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
if(data.detail !== undefined){
let data7 = data.detail;
if(Array.isArray(data7)){
if(data7.length < 1){
const err7 = {instancePath:instancePath+"/detail",schemaPath:"#/properties/detail/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
const len3 = data7.length;
for(let i3=0; i3<len3; i3++){
if(!(validate97(data7[i3], {instancePath:instancePath+"/detail/" + i3,parentData:data7,parentDataProperty:i3,rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
}
else {
const err8 = {instancePath:instancePath+"/detail",schemaPath:"#/properties/detail/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
}
}
else {
const err9 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
validate607.errors = vErrors;
return errors === 0;
}


function validate566(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.resourceType === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "resourceType"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.subject === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "subject"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
for(const key0 in data){
if(!(func2.call(schema70.properties, key0))){
const err2 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.resourceType !== undefined){
if("Condition" !== data.resourceType){
const err3 = {instancePath:instancePath+"/resourceType",schemaPath:"#/properties/resourceType/const",keyword:"const",params:{allowedValue: "Condition"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate23(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate23.errors : vErrors.concat(validate23.errors);
errors = vErrors.length;
}
}
if(data.meta !== undefined){
if(!(validate25(data.meta, {instancePath:instancePath+"/meta",parentData:data,parentDataProperty:"meta",rootData}))){
vErrors = vErrors === null ? validate25.errors : vErrors.concat(validate25.errors);
errors = vErrors.length;
}
}
if(data.implicitRules !== undefined){
if(!(validate30(data.implicitRules, {instancePath:instancePath+"/implicitRules",parentData:data,parentDataProperty:"implicitRules",rootData}))){
vErrors = vErrors === null ? validate30.errors : vErrors.concat(validate30.errors);
errors = vErrors.length;
}
}
if(data._implicitRules !== undefined){
if(!(validate32(data._implicitRules, {instancePath:instancePath+"/_implicitRules",parentData:data,parentDataProperty:"_implicitRules",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.language !== undefined){
if(!(validate91(data.language, {instancePath:instancePath+"/language",parentData:data,parentDataProperty:"language",rootData}))){
vErrors = vErrors === null ? validate91.errors : vErrors.concat(validate91.errors);
errors = vErrors.length;
}
}
if(data._language !== undefined){
if(!(validate32(data._language, {instancePath:instancePath+"/_language",parentData:data,parentDataProperty:"_language",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.text !== undefined){
if(!(validate511(data.text, {instancePath:instancePath+"/text",parentData:data,parentDataProperty:"text",rootData}))){
vErrors = vErrors === null ? validate511.errors : vErrors.concat(validate511.errors);
errors = vErrors.length;
}
}
if(data.contained !== undefined){
let data8 = data.contained;
if(Array.isArray(data8)){
if(data8.length < 1){
const err4 = {instancePath:instancePath+"/contained",schemaPath:"#/properties/contained/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
const len0 = data8.length;
for(let i0=0; i0<len0; i0++){
if(!(wrapper40.validate(data8[i0], {instancePath:instancePath+"/contained/" + i0,parentData:data8,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? wrapper40.validate.errors : vErrors.concat(wrapper40.validate.errors);
errors = vErrors.length;
}
}
}
else {
const err5 = {instancePath:instancePath+"/contained",schemaPath:"#/properties/contained/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
if(data.extension !== undefined){
let data10 = data.extension;
if(Array.isArray(data10)){
if(data10.length < 1){
const err6 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
const len1 = data10.length;
for(let i1=0; i1<len1; i1++){
if(!(validate28(data10[i1], {instancePath:instancePath+"/extension/" + i1,parentData:data10,parentDataProperty:i1,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err7 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
}
if(data.modifierExtension !== undefined){
let data12 = data.modifierExtension;
if(Array.isArray(data12)){
if(data12.length < 1){
const err8 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
const len2 = data12.length;
for(let i2=0; i2<len2; i2++){
if(!(validate28(data12[i2], {instancePath:instancePath+"/modifierExtension/" + i2,parentData:data12,parentDataProperty:i2,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err9 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
}
if(data.identifier !== undefined){
let data14 = data.identifier;
if(Array.isArray(data14)){
if(data14.length < 1){
const err10 = {instancePath:instancePath+"/identifier",schemaPath:"#/properties/identifier/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err10];
}
else {
vErrors.push(err10);
}
errors++;
}
const len3 = data14.length;
for(let i3=0; i3<len3; i3++){
if(!(validate103(data14[i3], {instancePath:instancePath+"/identifier/" + i3,parentData:data14,parentDataProperty:i3,rootData}))){
vErrors = vErrors === null ? validate103.errors : vErrors.concat(validate103.errors);
errors = vErrors.length;
}
}
}
else {
const err11 = {instancePath:instancePath+"/identifier",schemaPath:"#/properties/identifier/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err11];
}
else {
vErrors.push(err11);
}
errors++;
}
}
if(data.clinicalStatus !== undefined){
let data16 = data.clinicalStatus;
if(!(validate106(data16, {instancePath:instancePath+"/clinicalStatus",parentData:data,parentDataProperty:"clinicalStatus",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
if(data16 && typeof data16 == "object" && !Array.isArray(data16)){
if(data16.coding === undefined){
const err12 = {instancePath:instancePath+"/clinicalStatus",schemaPath:"#/properties/clinicalStatus/required",keyword:"required",params:{missingProperty: "coding"}};
if(vErrors === null){
vErrors = [err12];
}
else {
vErrors.push(err12);
}
errors++;
}
if(data16.coding !== undefined){
let data17 = data16.coding;
if(Array.isArray(data17)){
const _errs26 = errors;
const len4 = data17.length;
for(let i4=0; i4<len4; i4++){
let data18 = data17[i4];
const _errs27 = errors;
const _errs28 = errors;
let valid11 = false;
const _errs29 = errors;
if(data18 && typeof data18 == "object" && !Array.isArray(data18)){
if(data18.system === undefined){
const err13 = {instancePath:instancePath+"/clinicalStatus/coding/" + i4,schemaPath:"#/properties/clinicalStatus/properties/coding/contains/anyOf/0/required",keyword:"required",params:{missingProperty: "system"}};
if(vErrors === null){
vErrors = [err13];
}
else {
vErrors.push(err13);
}
errors++;
}
if(data18.code === undefined){
const err14 = {instancePath:instancePath+"/clinicalStatus/coding/" + i4,schemaPath:"#/properties/clinicalStatus/properties/coding/contains/anyOf/0/required",keyword:"required",params:{missingProperty: "code"}};
if(vErrors === null){
vErrors = [err14];
}
else {
vErrors.push(err14);
}
errors++;
}
if(data18.system !== undefined){
if("http://terminology.hl7.org/CodeSystem/condition-clinical" !== data18.system){
const err15 = {instancePath:instancePath+"/clinicalStatus/coding/" + i4+"/system",schemaPath:"#/properties/clinicalStatus/properties/coding/contains/anyOf/0/properties/system/const",keyword:"const",params:{allowedValue: "http://terminology.hl7.org/CodeSystem/condition-clinical"}};
if(vErrors === null){
vErrors = [err15];
}
else {
vErrors.push(err15);
}
errors++;
}
}
if(data18.code !== undefined){
let data20 = data18.code;
if(!((((((data20 === "active") || (data20 === "recurrence")) || (data20 === "relapse")) || (data20 === "inactive")) || (data20 === "remission")) || (data20 === "resolved"))){
const err16 = {instancePath:instancePath+"/clinicalStatus/coding/" + i4+"/code",schemaPath:"#/properties/clinicalStatus/properties/coding/contains/anyOf/0/properties/code/enum",keyword:"enum",params:{allowedValues: schema70.properties.clinicalStatus.properties.coding.contains.anyOf[0].properties.code.enum}};
if(vErrors === null){
vErrors = [err16];
}
else {
vErrors.push(err16);
}
errors++;
}
}
}
else {
const err17 = {instancePath:instancePath+"/clinicalStatus/coding/" + i4,schemaPath:"#/properties/clinicalStatus/properties/coding/contains/anyOf/0/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err17];
}
else {
vErrors.push(err17);
}
errors++;
}
var _valid0 = _errs29 === errors;
valid11 = valid11 || _valid0;
if(!valid11){
const err18 = {instancePath:instancePath+"/clinicalStatus/coding/" + i4,schemaPath:"#/properties/clinicalStatus/properties/coding/contains/anyOf",keyword:"anyOf",params:{}};
if(vErrors === null){
vErrors = [err18];
}
else {
vErrors.push(err18);
}
errors++;
}
else {
errors = _errs28;
if(vErrors !== null){
if(_errs28){
vErrors.length = _errs28;
}
else {
vErrors = null;
}
}
}
var valid10 = _errs27 === errors;
if(valid10){
break;
}
}
if(!valid10){
const err19 = {instancePath:instancePath+"/clinicalStatus/coding",schemaPath:"#/properties/clinicalStatus/properties/coding/contains",keyword:"contains",params:{minContains: 1}};
if(vErrors === null){
vErrors = [err19];
}
else {
vErrors.push(err19);
}
errors++;
}
else {
errors = _errs26;
if(vErrors !== null){
if(_errs26){
vErrors.length = _errs26;
}
else {
vErrors = null;
}
}
}
}
else {
const err20 = {instancePath:instancePath+"/clinicalStatus/coding",schemaPath:"#/properties/clinicalStatus/properties/coding/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err20];
}
else {
vErrors.push(err20);
}
errors++;
}
}
}
else {
const err21 = {instancePath:instancePath+"/clinicalStatus",schemaPath:"#/properties/clinicalStatus/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err21];
}
else {
vErrors.push(err21);
}
errors++;
}
}
if(data.verificationStatus !== undefined){
let data21 = data.verificationStatus;
if(!(validate106(data21, {instancePath:instancePath+"/verificationStatus",parentData:data,parentDataProperty:"verificationStatus",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
if(data21 && typeof data21 == "object" && !Array.isArray(data21)){
if(data21.coding === undefined){
const err22 = {instancePath:instancePath+"/verificationStatus",schemaPath:"#/properties/verificationStatus/required",keyword:"required",params:{missingProperty: "coding"}};
if(vErrors === null){
vErrors = [err22];
}
else {
vErrors.push(err22);
}
errors++;
}
if(data21.coding !== undefined){
let data22 = data21.coding;
if(Array.isArray(data22)){
const _errs37 = errors;
const len5 = data22.length;
for(let i5=0; i5<len5; i5++){
let data23 = data22[i5];
const _errs38 = errors;
const _errs39 = errors;
let valid15 = false;
const _errs40 = errors;
if(data23 && typeof data23 == "object" && !Array.isArray(data23)){
if(data23.system === undefined){
const err23 = {instancePath:instancePath+"/verificationStatus/coding/" + i5,schemaPath:"#/properties/verificationStatus/properties/coding/contains/anyOf/0/required",keyword:"required",params:{missingProperty: "system"}};
if(vErrors === null){
vErrors = [err23];
}
else {
vErrors.push(err23);
}
errors++;
}
if(data23.code === undefined){
const err24 = {instancePath:instancePath+"/verificationStatus/coding/" + i5,schemaPath:"#/properties/verificationStatus/properties/coding/contains/anyOf/0/required",keyword:"required",params:{missingProperty: "code"}};
if(vErrors === null){
vErrors = [err24];
}
else {
vErrors.push(err24);
}
errors++;
}
if(data23.system !== undefined){
if("http://terminology.hl7.org/CodeSystem/condition-ver-status" !== data23.system){
const err25 = {instancePath:instancePath+"/verificationStatus/coding/" + i5+"/system",schemaPath:"#/properties/verificationStatus/properties/coding/contains/anyOf/0/properties/system/const",keyword:"const",params:{allowedValue: "http://terminology.hl7.org/CodeSystem/condition-ver-status"}};
if(vErrors === null){
vErrors = [err25];
}
else {
vErrors.push(err25);
}
errors++;
}
}
if(data23.code !== undefined){
let data25 = data23.code;
if(!((((((data25 === "unconfirmed") || (data25 === "provisional")) || (data25 === "differential")) || (data25 === "confirmed")) || (data25 === "refuted")) || (data25 === "entered-in-error"))){
const err26 = {instancePath:instancePath+"/verificationStatus/coding/" + i5+"/code",schemaPath:"#/properties/verificationStatus/properties/coding/contains/anyOf/0/properties/code/enum",keyword:"enum",params:{allowedValues: schema70.properties.verificationStatus.properties.coding.contains.anyOf[0].properties.code.enum}};
if(vErrors === null){
vErrors = [err26];
}
else {
vErrors.push(err26);
}
errors++;
}
}
}
else {
const err27 = {instancePath:instancePath+"/verificationStatus/coding/" + i5,schemaPath:"#/properties/verificationStatus/properties/coding/contains/anyOf/0/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err27];
}
else {
vErrors.push(err27);
}
errors++;
}
var _valid1 = _errs40 === errors;
valid15 = valid15 || _valid1;
if(!valid15){
const err28 = {instancePath:instancePath+"/verificationStatus/coding/" + i5,schemaPath:"#/properties/verificationStatus/properties/coding/contains/anyOf",keyword:"anyOf",params:{}};
if(vErrors === null){
vErrors = [err28];
}
else {
vErrors.push(err28);
}
errors++;
}
else {
errors = _errs39;
if(vErrors !== null){
if(_errs39){
vErrors.length = _errs39;
}
else {
vErrors = null;
}
}
}
var valid14 = _errs38 === errors;
if(valid14){
break;
}
}
if(!valid14){
const err29 = {instancePath:instancePath+"/verificationStatus/coding",schemaPath:"#/properties/verificationStatus/properties/coding/contains",keyword:"contains",params:{minContains: 1}};
if(vErrors === null){
vErrors = [err29];
}
else {
vErrors.push(err29);
}
errors++;
}
else {
errors = _errs37;
if(vErrors !== null){
if(_errs37){
vErrors.length = _errs37;
}
else {
vErrors = null;
}
}
}
}
else {
const err30 = {instancePath:instancePath+"/verificationStatus/coding",schemaPath:"#/properties/verificationStatus/properties/coding/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err30];
}
else {
vErrors.push(err30);
}
errors++;
}
}
}
else {
const err31 = {instancePath:instancePath+"/verificationStatus",schemaPath:"#/properties/verificationStatus/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err31];
}
else {
vErrors.push(err31);
}
errors++;
}
}
if(data.category !== undefined){
let data26 = data.category;
if(Array.isArray(data26)){
if(data26.length < 1){
const err32 = {instancePath:instancePath+"/category",schemaPath:"#/properties/category/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err32];
}
else {
vErrors.push(err32);
}
errors++;
}
const len6 = data26.length;
for(let i6=0; i6<len6; i6++){
if(!(validate106(data26[i6], {instancePath:instancePath+"/category/" + i6,parentData:data26,parentDataProperty:i6,rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
}
else {
const err33 = {instancePath:instancePath+"/category",schemaPath:"#/properties/category/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err33];
}
else {
vErrors.push(err33);
}
errors++;
}
}
if(data.severity !== undefined){
if(!(validate106(data.severity, {instancePath:instancePath+"/severity",parentData:data,parentDataProperty:"severity",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.code !== undefined){
if(!(validate106(data.code, {instancePath:instancePath+"/code",parentData:data,parentDataProperty:"code",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.bodySite !== undefined){
let data30 = data.bodySite;
if(Array.isArray(data30)){
if(data30.length < 1){
const err34 = {instancePath:instancePath+"/bodySite",schemaPath:"#/properties/bodySite/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err34];
}
else {
vErrors.push(err34);
}
errors++;
}
const len7 = data30.length;
for(let i7=0; i7<len7; i7++){
if(!(validate106(data30[i7], {instancePath:instancePath+"/bodySite/" + i7,parentData:data30,parentDataProperty:i7,rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
}
else {
const err35 = {instancePath:instancePath+"/bodySite",schemaPath:"#/properties/bodySite/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err35];
}
else {
vErrors.push(err35);
}
errors++;
}
}
if(data.subject !== undefined){
if(!(validate97(data.subject, {instancePath:instancePath+"/subject",parentData:data,parentDataProperty:"subject",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
if(data.encounter !== undefined){
if(!(validate97(data.encounter, {instancePath:instancePath+"/encounter",parentData:data,parentDataProperty:"encounter",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
if(data.onsetDateTime !== undefined){
let data34 = data.onsetDateTime;
if(typeof data34 === "string"){
if(!pattern7.test(data34)){
const err36 = {instancePath:instancePath+"/onsetDateTime",schemaPath:"#/properties/onsetDateTime/pattern",keyword:"pattern",params:{pattern: "^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1])(T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00)))?)?)?$"}};
if(vErrors === null){
vErrors = [err36];
}
else {
vErrors.push(err36);
}
errors++;
}
}
else {
const err37 = {instancePath:instancePath+"/onsetDateTime",schemaPath:"#/properties/onsetDateTime/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err37];
}
else {
vErrors.push(err37);
}
errors++;
}
}
if(data._onsetDateTime !== undefined){
if(!(validate32(data._onsetDateTime, {instancePath:instancePath+"/_onsetDateTime",parentData:data,parentDataProperty:"_onsetDateTime",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.onsetAge !== undefined){
if(!(validate81(data.onsetAge, {instancePath:instancePath+"/onsetAge",parentData:data,parentDataProperty:"onsetAge",rootData}))){
vErrors = vErrors === null ? validate81.errors : vErrors.concat(validate81.errors);
errors = vErrors.length;
}
}
if(data.onsetPeriod !== undefined){
if(!(validate72(data.onsetPeriod, {instancePath:instancePath+"/onsetPeriod",parentData:data,parentDataProperty:"onsetPeriod",rootData}))){
vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
errors = vErrors.length;
}
}
if(data.onsetRange !== undefined){
if(!(validate248(data.onsetRange, {instancePath:instancePath+"/onsetRange",parentData:data,parentDataProperty:"onsetRange",rootData}))){
vErrors = vErrors === null ? validate248.errors : vErrors.concat(validate248.errors);
errors = vErrors.length;
}
}
if(data.onsetString !== undefined){
let data39 = data.onsetString;
if(typeof data39 === "string"){
if(!pattern1.test(data39)){
const err38 = {instancePath:instancePath+"/onsetString",schemaPath:"#/properties/onsetString/pattern",keyword:"pattern",params:{pattern: "^[ \\r\\n\\t\\S]+$"}};
if(vErrors === null){
vErrors = [err38];
}
else {
vErrors.push(err38);
}
errors++;
}
}
else {
const err39 = {instancePath:instancePath+"/onsetString",schemaPath:"#/properties/onsetString/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err39];
}
else {
vErrors.push(err39);
}
errors++;
}
}
if(data._onsetString !== undefined){
if(!(validate32(data._onsetString, {instancePath:instancePath+"/_onsetString",parentData:data,parentDataProperty:"_onsetString",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.abatementDateTime !== undefined){
let data41 = data.abatementDateTime;
if(typeof data41 === "string"){
if(!pattern7.test(data41)){
const err40 = {instancePath:instancePath+"/abatementDateTime",schemaPath:"#/properties/abatementDateTime/pattern",keyword:"pattern",params:{pattern: "^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1])(T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00)))?)?)?$"}};
if(vErrors === null){
vErrors = [err40];
}
else {
vErrors.push(err40);
}
errors++;
}
}
else {
const err41 = {instancePath:instancePath+"/abatementDateTime",schemaPath:"#/properties/abatementDateTime/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err41];
}
else {
vErrors.push(err41);
}
errors++;
}
}
if(data._abatementDateTime !== undefined){
if(!(validate32(data._abatementDateTime, {instancePath:instancePath+"/_abatementDateTime",parentData:data,parentDataProperty:"_abatementDateTime",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.abatementAge !== undefined){
if(!(validate81(data.abatementAge, {instancePath:instancePath+"/abatementAge",parentData:data,parentDataProperty:"abatementAge",rootData}))){
vErrors = vErrors === null ? validate81.errors : vErrors.concat(validate81.errors);
errors = vErrors.length;
}
}
if(data.abatementPeriod !== undefined){
if(!(validate72(data.abatementPeriod, {instancePath:instancePath+"/abatementPeriod",parentData:data,parentDataProperty:"abatementPeriod",rootData}))){
vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
errors = vErrors.length;
}
}
if(data.abatementRange !== undefined){
if(!(validate248(data.abatementRange, {instancePath:instancePath+"/abatementRange",parentData:data,parentDataProperty:"abatementRange",rootData}))){
vErrors = vErrors === null ? validate248.errors : vErrors.concat(validate248.errors);
errors = vErrors.length;
}
}
if(data.abatementString !== undefined){
let data46 = data.abatementString;
if(typeof data46 === "string"){
if(!pattern1.test(data46)){
const err42 = {instancePath:instancePath+"/abatementString",schemaPath:"#/properties/abatementString/pattern",keyword:"pattern",params:{pattern: "^[ \\r\\n\\t\\S]+$"}};
if(vErrors === null){
vErrors = [err42];
}
else {
vErrors.push(err42);
}
errors++;
}
}
else {
const err43 = {instancePath:instancePath+"/abatementString",schemaPath:"#/properties/abatementString/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err43];
}
else {
vErrors.push(err43);
}
errors++;
}
}
if(data._abatementString !== undefined){
if(!(validate32(data._abatementString, {instancePath:instancePath+"/_abatementString",parentData:data,parentDataProperty:"_abatementString",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.recordedDate !== undefined){
if(!(validate74(data.recordedDate, {instancePath:instancePath+"/recordedDate",parentData:data,parentDataProperty:"recordedDate",rootData}))){
vErrors = vErrors === null ? validate74.errors : vErrors.concat(validate74.errors);
errors = vErrors.length;
}
}
if(data._recordedDate !== undefined){
if(!(validate32(data._recordedDate, {instancePath:instancePath+"/_recordedDate",parentData:data,parentDataProperty:"_recordedDate",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.recorder !== undefined){
if(!(validate97(data.recorder, {instancePath:instancePath+"/recorder",parentData:data,parentDataProperty:"recorder",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
if(data.asserter !== undefined){
if(!(validate97(data.asserter, {instancePath:instancePath+"/asserter",parentData:data,parentDataProperty:"asserter",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
if(data.stage !== undefined){
let data52 = data.stage;
if(Array.isArray(data52)){
if(data52.length < 1){
const err44 = {instancePath:instancePath+"/stage",schemaPath:"#/properties/stage/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err44];
}
else {
vErrors.push(err44);
}
errors++;
}
const len8 = data52.length;
for(let i8=0; i8<len8; i8++){
if(!(validate599(data52[i8], {instancePath:instancePath+"/stage/" + i8,parentData:data52,parentDataProperty:i8,rootData}))){
vErrors = vErrors === null ? validate599.errors : vErrors.concat(validate599.errors);
errors = vErrors.length;
}
}
}
else {
const err45 = {instancePath:instancePath+"/stage",schemaPath:"#/properties/stage/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err45];
}
else {
vErrors.push(err45);
}
errors++;
}
}
if(data.evidence !== undefined){
let data54 = data.evidence;
if(Array.isArray(data54)){
if(data54.length < 1){
const err46 = {instancePath:instancePath+"/evidence",schemaPath:"#/properties/evidence/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err46];
}
else {
vErrors.push(err46);
}
errors++;
}
const len9 = data54.length;
for(let i9=0; i9<len9; i9++){
if(!(validate607(data54[i9], {instancePath:instancePath+"/evidence/" + i9,parentData:data54,parentDataProperty:i9,rootData}))){
vErrors = vErrors === null ? validate607.errors : vErrors.concat(validate607.errors);
errors = vErrors.length;
}
}
}
else {
const err47 = {instancePath:instancePath+"/evidence",schemaPath:"#/properties/evidence/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err47];
}
else {
vErrors.push(err47);
}
errors++;
}
}
if(data.note !== undefined){
let data56 = data.note;
if(Array.isArray(data56)){
if(data56.length < 1){
const err48 = {instancePath:instancePath+"/note",schemaPath:"#/properties/note/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err48];
}
else {
vErrors.push(err48);
}
errors++;
}
const len10 = data56.length;
for(let i10=0; i10<len10; i10++){
if(!(validate95(data56[i10], {instancePath:instancePath+"/note/" + i10,parentData:data56,parentDataProperty:i10,rootData}))){
vErrors = vErrors === null ? validate95.errors : vErrors.concat(validate95.errors);
errors = vErrors.length;
}
}
}
else {
const err49 = {instancePath:instancePath+"/note",schemaPath:"#/properties/note/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err49];
}
else {
vErrors.push(err49);
}
errors++;
}
}
let count0 = 0;
if(data["onsetDateTime"] !== undefined){
count0++;
}
if(data["onsetAge"] !== undefined){
count0++;
}
if(data["onsetPeriod"] !== undefined){
count0++;
}
if(data["onsetRange"] !== undefined){
count0++;
}
if(data["onsetString"] !== undefined){
count0++;
}
if(count0 > 1){
const err50 = {instancePath,schemaPath:"#/choices",keyword:"choices",params:{}};
if(vErrors === null){
vErrors = [err50];
}
else {
vErrors.push(err50);
}
errors++;
}
let count1 = 0;
if(data["abatementDateTime"] !== undefined){
count1++;
}
if(data["abatementAge"] !== undefined){
count1++;
}
if(data["abatementPeriod"] !== undefined){
count1++;
}
if(data["abatementRange"] !== undefined){
count1++;
}
if(data["abatementString"] !== undefined){
count1++;
}
if(count1 > 1){
const err51 = {instancePath,schemaPath:"#/choices",keyword:"choices",params:{}};
if(vErrors === null){
vErrors = [err51];
}
else {
vErrors.push(err51);
}
errors++;
}
}
else {
const err52 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err52];
}
else {
vErrors.push(err52);
}
errors++;
}
validate566.errors = vErrors;
return errors === 0;
}

const schema73 = {"type":"object","properties":{"resourceType":{"const":"Observation"},"id":{"$ref":"#/definitions/id"},"meta":{"$ref":"#/definitions/Meta"},"implicitRules":{"$ref":"#/definitions/uri"},"_implicitRules":{"$ref":"#/definitions/Element"},"language":{"$ref":"#/definitions/code"},"_language":{"$ref":"#/definitions/Element"},"text":{"$ref":"#/definitions/Narrative"},"contained":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/ResourceList"}},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"identifier":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Identifier"}},"basedOn":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"partOf":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"status":{"enum":["registered","preliminary","final","amended","corrected","cancelled","entered-in-error","unknown"]},"_status":{"$ref":"#/definitions/Element"},"category":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"code":{"$ref":"#/definitions/CodeableConcept"},"subject":{"$ref":"#/definitions/Reference"},"focus":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"encounter":{"$ref":"#/definitions/Reference"},"effectiveDateTime":{"type":"string","pattern":"^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1])(T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00)))?)?)?$"},"_effectiveDateTime":{"$ref":"#/definitions/Element"},"effectivePeriod":{"$ref":"#/definitions/Period"},"effectiveTiming":{"$ref":"#/definitions/Timing"},"effectiveInstant":{"type":"string","pattern":"^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)-(0[1-9]|1[0-2])-(0[1-9]|[1-2][0-9]|3[0-1])T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00))$"},"_effectiveInstant":{"$ref":"#/definitions/Element"},"issued":{"$ref":"#/definitions/instant"},"_issued":{"$ref":"#/definitions/Element"},"performer":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"valueQuantity":{"$ref":"#/definitions/Quantity"},"valueCodeableConcept":{"$ref":"#/definitions/CodeableConcept"},"valueString":{"type":"string","pattern":"^[ \\r\\n\\t\\S]+$"},"_valueString":{"$ref":"#/definitions/Element"},"valueBoolean":{"type":"boolean"},"_valueBoolean":{"$ref":"#/definitions/Element"},"valueInteger":{"type":"number"},"_valueInteger":{"$ref":"#/definitions/Element"},"valueRange":{"$ref":"#/definitions/Range"},"valueRatio":{"$ref":"#/definitions/Ratio"},"valueSampledData":{"$ref":"#/definitions/SampledData"},"valueTime":{"type":"string","pattern":"^([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?$"},"_valueTime":{"$ref":"#/definitions/Element"},"valueDateTime":{"type":"string","pattern":"^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1])(T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00)))?)?)?$"},"_valueDateTime":{"$ref":"#/definitions/Element"},"valuePeriod":{"$ref":"#/definitions/Period"},"dataAbsentReason":{"$ref":"#/definitions/CodeableConcept"},"interpretation":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"note":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Annotation"}},"bodySite":{"$ref":"#/definitions/CodeableConcept"},"method":{"$ref":"#/definitions/CodeableConcept"},"specimen":{"$ref":"#/definitions/Reference"},"device":{"$ref":"#/definitions/Reference"},"referenceRange":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Observation_ReferenceRange"}},"hasMember":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"derivedFrom":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"component":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Observation_Component"}}},"required":["code","resourceType","status"],"choices":[{"element":"effective[x]","properties":["effectiveDateTime","effectivePeriod","effectiveTiming","effectiveInstant"],"required":false},{"element":"value[x]","properties":["valueQuantity","valueCodeableConcept","valueString","valueBoolean","valueInteger","valueRange","valueRatio","valueSampledData","valueTime","valueDateTime","valuePeriod"],"required":false}],"additionalProperties":false};
const schema74 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"low":{"$ref":"#/definitions/Quantity"},"high":{"$ref":"#/definitions/Quantity"},"type":{"$ref":"#/definitions/CodeableConcept"},"appliesTo":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"age":{"$ref":"#/definitions/Range"},"text":{"$ref":"#/definitions/string"},"_text":{"$ref":"#/definitions/Element"}},"additionalProperties":false};

function validate659(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
for(const key0 in data){
if(!(func2.call(schema74.properties, key0))){
const err0 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err1 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(validate28(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err2 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.modifierExtension !== undefined){
let data3 = data.modifierExtension;
if(Array.isArray(data3)){
if(data3.length < 1){
const err3 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
const len1 = data3.length;
for(let i1=0; i1<len1; i1++){
if(!(validate28(data3[i1], {instancePath:instancePath+"/modifierExtension/" + i1,parentData:data3,parentDataProperty:i1,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err4 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.low !== undefined){
if(!(validate236(data.low, {instancePath:instancePath+"/low",parentData:data,parentDataProperty:"low",rootData}))){
vErrors = vErrors === null ? validate236.errors : vErrors.concat(validate236.errors);
errors = vErrors.length;
}
}
if(data.high !== undefined){
if(!(validate236(data.high, {instancePath:instancePath+"/high",parentData:data,parentDataProperty:"high",rootData}))){
vErrors = vErrors === null ? validate236.errors : vErrors.concat(validate236.errors);
errors = vErrors.length;
}
}
if(data.type !== undefined){
if(!(validate106(data.type, {instancePath:instancePath+"/type",parentData:data,parentDataProperty:"type",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.appliesTo !== undefined){
let data8 = data.appliesTo;
if(Array.isArray(data8)){
if(data8.length < 1){
const err5 = {instancePath:instancePath+"/appliesTo",schemaPath:"#/properties/appliesTo/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
const len2 = data8.length;
for(let i2=0; i2<len2; i2++){
if(!(validate106(data8[i2], {instancePath:instancePath+"/appliesTo/" + i2,parentData:data8,parentDataProperty:i2,rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
}
else {
const err6 = {instancePath:instancePath+"/appliesTo",schemaPath:"#/properties/appliesTo/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
if(data.age !== undefined){
if(!(validate248(data.age, {instancePath:instancePath+"/age",parentData:data,parentDataProperty:"age",rootData}))){
vErrors = vErrors === null ? validate248.errors : vErrors.concat(validate248.errors);
errors = vErrors.length;
}
}
if(data.text !== undefined){
if(!(validate26(data.text, {instancePath:instancePath+"/text",parentData:data,parentDataProperty:"text",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._text !== undefined){
if(!(validate32(data._text, {instancePath:instancePath+"/_text",parentData:data,parentDataProperty:"_text",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
}
else {
const err7 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
validate659.errors = vErrors;
return errors === 0;
}

const schema75 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"code":{"$ref":"#/definitions/CodeableConcept"},"valueQuantity":{"$ref":"#/definitions/Quantity"},"valueCodeableConcept":{"$ref":"#/definitions/CodeableConcept"},"valueString":{"type":"string","pattern":"^[ \\r\\n\\t\\S]+$"},"_valueString":{"$ref":"#/definitions/Element"},"valueBoolean":{"type":"boolean"},"_valueBoolean":{"$ref":"#/definitions/Element"},"valueInteger":{"type":"number"},"_valueInteger":{"$ref":"#/definitions/Element"},"valueRange":{"$ref":"#/definitions/Range"},"valueRatio":{"$ref":"#/definitions/Ratio"},"valueSampledData":{"$ref":"#/definitions/SampledData"},"valueTime":{"type":"string","pattern":"^([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?$"},"_valueTime":{"$ref":"#/definitions/Element"},"valueDateTime":{"type":"string","pattern":"^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1])(T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00)))?)?)?$"},"_valueDateTime":{"$ref":"#/definitions/Element"},"valuePeriod":{"$ref":"#/definitions/Period"},"dataAbsentReason":{"$ref":"#/definitions/CodeableConcept"},"interpretation":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"referenceRange":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Observation_ReferenceRange"}}},"required":["code"],"choices":[{"element":"value[x]","properties":["valueQuantity","valueCodeableConcept","valueString","valueBoolean","valueInteger","valueRange","valueRatio","valueSampledData","valueTime","valueDateTime","valuePeriod"],"required":false}],"additionalProperties":false};

function validate673(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.code === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "code"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
for(const key0 in data){
if(!(func2.call(schema75.properties, key0))){
const err1 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err2 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(validate28(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err3 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.modifierExtension !== undefined){
let data3 = data.modifierExtension;
if(Array.isArray(data3)){
if(data3.length < 1){
const err4 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
const len1 = data3.length;
for(let i1=0; i1<len1; i1++){
if(!(validate28(data3[i1], {instancePath:instancePath+"/modifierExtension/" + i1,parentData:data3,parentDataProperty:i1,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err5 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
if(data.code !== undefined){
if(!(validate106(data.code, {instancePath:instancePath+"/code",parentData:data,parentDataProperty:"code",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.valueQuantity !== undefined){
if(!(validate236(data.valueQuantity, {instancePath:instancePath+"/valueQuantity",parentData:data,parentDataProperty:"valueQuantity",rootData}))){
vErrors = vErrors === null ? validate236.errors : vErrors.concat(validate236.errors);
errors = vErrors.length;
}
}
if(data.valueCodeableConcept !== undefined){
if(!(validate106(data.valueCodeableConcept, {instancePath:instancePath+"/valueCodeableConcept",parentData:data,parentDataProperty:"valueCodeableConcept",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.valueString !== undefined){
let data8 = data.valueString;
if(typeof data8 === "string"){
if(!pattern1.test(data8)){
const err6 = {instancePath:instancePath+"/valueString",schemaPath:"#/properties/valueString/pattern",keyword:"pattern",params:{pattern: "^[ \\r\\n\\t\\S]+$"}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
else {
const err7 = {instancePath:instancePath+"/valueString",schemaPath:"#/properties/valueString/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
}
if(data._valueString !== undefined){
if(!(validate32(data._valueString, {instancePath:instancePath+"/_valueString",parentData:data,parentDataProperty:"_valueString",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueBoolean !== undefined){
if(typeof data.valueBoolean !== "boolean"){
const err8 = {instancePath:instancePath+"/valueBoolean",schemaPath:"#/properties/valueBoolean/type",keyword:"type",params:{type: "boolean"}};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
}
if(data._valueBoolean !== undefined){
if(!(validate32(data._valueBoolean, {instancePath:instancePath+"/_valueBoolean",parentData:data,parentDataProperty:"_valueBoolean",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueInteger !== undefined){
let data12 = data.valueInteger;
if(!((typeof data12 == "number") && (isFinite(data12)))){
const err9 = {instancePath:instancePath+"/valueInteger",schemaPath:"#/properties/valueInteger/type",keyword:"type",params:{type: "number"}};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
}
if(data._valueInteger !== undefined){
if(!(validate32(data._valueInteger, {instancePath:instancePath+"/_valueInteger",parentData:data,parentDataProperty:"_valueInteger",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueRange !== undefined){
if(!(validate248(data.valueRange, {instancePath:instancePath+"/valueRange",parentData:data,parentDataProperty:"valueRange",rootData}))){
vErrors = vErrors === null ? validate248.errors : vErrors.concat(validate248.errors);
errors = vErrors.length;
}
}
if(data.valueRatio !== undefined){
if(!(validate253(data.valueRatio, {instancePath:instancePath+"/valueRatio",parentData:data,parentDataProperty:"valueRatio",rootData}))){
vErrors = vErrors === null ? validate253.errors : vErrors.concat(validate253.errors);
errors = vErrors.length;
}
}
if(data.valueSampledData !== undefined){
if(!(validate259(data.valueSampledData, {instancePath:instancePath+"/valueSampledData",parentData:data,parentDataProperty:"valueSampledData",rootData}))){
vErrors = vErrors === null ? validate259.errors : vErrors.concat(validate259.errors);
errors = vErrors.length;
}
}
if(data.valueTime !== undefined){
let data17 = data.valueTime;
if(typeof data17 === "string"){
if(!pattern13.test(data17)){
const err10 = {instancePath:instancePath+"/valueTime",schemaPath:"#/properties/valueTime/pattern",keyword:"pattern",params:{pattern: "^([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?$"}};
if(vErrors === null){
vErrors = [err10];
}
else {
vErrors.push(err10);
}
errors++;
}
}
else {
const err11 = {instancePath:instancePath+"/valueTime",schemaPath:"#/properties/valueTime/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err11];
}
else {
vErrors.push(err11);
}
errors++;
}
}
if(data._valueTime !== undefined){
if(!(validate32(data._valueTime, {instancePath:instancePath+"/_valueTime",parentData:data,parentDataProperty:"_valueTime",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueDateTime !== undefined){
let data19 = data.valueDateTime;
if(typeof data19 === "string"){
if(!pattern7.test(data19)){
const err12 = {instancePath:instancePath+"/valueDateTime",schemaPath:"#/properties/valueDateTime/pattern",keyword:"pattern",params:{pattern: "^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1])(T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00)))?)?)?$"}};
if(vErrors === null){
vErrors = [err12];
}
else {
vErrors.push(err12);
}
errors++;
}
}
else {
const err13 = {instancePath:instancePath+"/valueDateTime",schemaPath:"#/properties/valueDateTime/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err13];
}
else {
vErrors.push(err13);
}
errors++;
}
}
if(data._valueDateTime !== undefined){
if(!(validate32(data._valueDateTime, {instancePath:instancePath+"/_valueDateTime",parentData:data,parentDataProperty:"_valueDateTime",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valuePeriod !== undefined){
if(!(validate72(data.valuePeriod, {instancePath:instancePath+"/valuePeriod",parentData:data,parentDataProperty:"valuePeriod",rootData}))){
vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
errors = vErrors.length;
}
}
if(data.dataAbsentReason !== undefined){
if(!(validate106(data.dataAbsentReason, {instancePath:instancePath+"/dataAbsentReason",parentData:data,parentDataProperty:"dataAbsentReason",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.interpretation !== undefined){
let data23 = data.interpretation;
if(Array.isArray(data23)){
if(data23.length < 1){
const err14 = {instancePath:instancePath+"/interpretation",schemaPath:"#/properties/interpretation/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err14];
}
else {
vErrors.push(err14);
}
errors++;
}
const len2 = data23.length;
for(let i2=0; i2<len2; i2++){
if(!(validate106(data23[i2], {instancePath:instancePath+"/interpretation/" + i2,parentData:data23,parentDataProperty:i2,rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
}
else {
const err15 = {instancePath:instancePath+"/interpretation",schemaPath:"#/properties/interpretation/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err15];
}
else {
vErrors.push(err15);
}
errors++;
}
}
if(data.referenceRange !== undefined){
let data25 = data.referenceRange;
if(Array.isArray(data25)){
if(data25.length < 1){
const err16 = {instancePath:instancePath+"/referenceRange",schemaPath:"#/properties/referenceRange/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err16];
}
else {
vErrors.push(err16);
}
errors++;
}
const len3 = data25.length;
for(let i3=0; i3<len3; i3++){
if(!(validate659(data25[i3], {instancePath:instancePath+"/referenceRange/" + i3,parentData:data25,parentDataProperty:i3,rootData}))){
vErrors = vErrors === null ? validate659.errors : vErrors.concat(validate659.errors);
errors = vErrors.length;
}
}
}
else {
const err17 = {instancePath:instancePath+"/referenceRange",schemaPath:"#/properties/referenceRange/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err17];
}
else {
vErrors.push(err17);
}
errors++;
}
}
let count0 = 0;
if(data["valueQuantity"] !== undefined){
count0++;
}
if(data["valueCodeableConcept"] !== undefined){
count0++;
}
if(data["valueString"] !== undefined){
count0++;
}
if(data["valueBoolean"] !== undefined){
count0++;
}
if(data["valueInteger"] !== undefined){
count0++;
}
if(data["valueRange"] !== undefined){
count0++;
}
if(data["valueRatio"] !== undefined){
count0++;
}
if(data["valueSampledData"] !== undefined){
count0++;
}
if(data["valueTime"] !== undefined){
count0++;
}
if(data["valueDateTime"] !== undefined){
count0++;
}
if(data["valuePeriod"] !== undefined){
count0++;
}
if(count0 > 1){
const err18 = {instancePath,schemaPath:"#/choices",keyword:"choices",params:{}};
if(vErrors === null){
vErrors = [err18];
}
else {
vErrors.push(err18);
}
errors++;
}
}
else {
const err19 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err19];
}
else {
vErrors.push(err19);
}
errors++;
}
validate673.errors = vErrors;
return errors === 0;
}


function validate615(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.code === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "code"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.resourceType === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "resourceType"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(data.status === undefined){
const err2 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "status"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
for(const key0 in data){
if(!(func2.call(schema73.properties, key0))){
const err3 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.resourceType !== undefined){
if("Observation" !== data.resourceType){
const err4 = {instancePath:instancePath+"/resourceType",schemaPath:"#/properties/resourceType/const",keyword:"const",params:{allowedValue: "Observation"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate23(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate23.errors : vErrors.concat(validate23.errors);
errors = vErrors.length;
}
}
if(data.meta !== undefined){
if(!(validate25(data.meta, {instancePath:instancePath+"/meta",parentData:data,parentDataProperty:"meta",rootData}))){
vErrors = vErrors === null ? validate25.errors : vErrors.concat(validate25.errors);
errors = vErrors.length;
}
}
if(data.implicitRules !== undefined){
if(!(validate30(data.implicitRules, {instancePath:instancePath+"/implicitRules",parentData:data,parentDataProperty:"implicitRules",rootData}))){
vErrors = vErrors === null ? validate30.errors : vErrors.concat(validate30.errors);
errors = vErrors.length;
}
}
if(data._implicitRules !== undefined){
if(!(validate32(data._implicitRules, {instancePath:instancePath+"/_implicitRules",parentData:data,parentDataProperty:"_implicitRules",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.language !== undefined){
if(!(validate91(data.language, {instancePath:instancePath+"/language",parentData:data,parentDataProperty:"language",rootData}))){
vErrors = vErrors === null ? validate91.errors : vErrors.concat(validate91.errors);
errors = vErrors.length;
}
}
if(data._language !== undefined){
if(!(validate32(data._language, {instancePath:instancePath+"/_language",parentData:data,parentDataProperty:"_language",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.text !== undefined){
if(!(validate511(data.text, {instancePath:instancePath+"/text",parentData:data,parentDataProperty:"text",rootData}))){
vErrors = vErrors === null ? validate511.errors : vErrors.concat(validate511.errors);
errors = vErrors.length;
}
}
if(data.contained !== undefined){
let data8 = data.contained;
if(Array.isArray(data8)){
if(data8.length < 1){
const err5 = {instancePath:instancePath+"/contained",schemaPath:"#/properties/contained/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
const len0 = data8.length;
for(let i0=0; i0<len0; i0++){
if(!(wrapper40.validate(data8[i0], {instancePath:instancePath+"/contained/" + i0,parentData:data8,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? wrapper40.validate.errors : vErrors.concat(wrapper40.validate.errors);
errors = vErrors.length;
}
}
}
else {
const err6 = {instancePath:instancePath+"/contained",schemaPath:"#/properties/contained/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
if(data.extension !== undefined){
let data10 = data.extension;
if(Array.isArray(data10)){
if(data10.length < 1){
const err7 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
const len1 = data10.length;
for(let i1=0; i1<len1; i1++){
if(!(validate28(data10[i1], {instancePath:instancePath+"/extension/" + i1,parentData:data10,parentDataProperty:i1,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err8 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
}
if(data.modifierExtension !== undefined){
let data12 = data.modifierExtension;
if(Array.isArray(data12)){
if(data12.length < 1){
const err9 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
const len2 = data12.length;
for(let i2=0; i2<len2; i2++){
if(!(validate28(data12[i2], {instancePath:instancePath+"/modifierExtension/" + i2,parentData:data12,parentDataProperty:i2,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err10 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err10];
}
else {
vErrors.push(err10);
}
errors++;
}
}
if(data.identifier !== undefined){
let data14 = data.identifier;
if(Array.isArray(data14)){
if(data14.length < 1){
const err11 = {instancePath:instancePath+"/identifier",schemaPath:"#/properties/identifier/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err11];
}
else {
vErrors.push(err11);
}
errors++;
}
const len3 = data14.length;
for(let i3=0; i3<len3; i3++){
if(!(validate103(data14[i3], {instancePath:instancePath+"/identifier/" + i3,parentData:data14,parentDataProperty:i3,rootData}))){
vErrors = vErrors === null ? validate103.errors : vErrors.concat(validate103.errors);
errors = vErrors.length;
}
}
}
else {
const err12 = {instancePath:instancePath+"/identifier",schemaPath:"#/properties/identifier/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err12];
}
else {
vErrors.push(err12);
}
errors++;
}
}
if(data.basedOn !== undefined){
let data16 = data.basedOn;
if(Array.isArray(data16)){
if(data16.length < 1){
const err13 = {instancePath:instancePath+"/basedOn",schemaPath:"#/properties/basedOn/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err13];
}
else {
vErrors.push(err13);
}
errors++;
}
const len4 = data16.length;
for(let i4=0; i4<len4; i4++){
if(!(validate97(data16[i4], {instancePath:instancePath+"/basedOn/" + i4,parentData:data16,parentDataProperty:i4,rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
}
else {
const err14 = {instancePath:instancePath+"/basedOn",schemaPath:"#/properties/basedOn/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err14];
}
else {
vErrors.push(err14);
}
errors++;
}
}
if(data.partOf !== undefined){
let data18 = data.partOf;
if(Array.isArray(data18)){
if(data18.length < 1){
const err15 = {instancePath:instancePath+"/partOf",schemaPath:"#/properties/partOf/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err15];
}
else {
vErrors.push(err15);
}
errors++;
}
const len5 = data18.length;
for(let i5=0; i5<len5; i5++){
if(!(validate97(data18[i5], {instancePath:instancePath+"/partOf/" + i5,parentData:data18,parentDataProperty:i5,rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
}
else {
const err16 = {instancePath:instancePath+"/partOf",schemaPath:"#/properties/partOf/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err16];
}
else {
vErrors.push(err16);
}
errors++;
}
}
if(data.status !== undefined){
let data20 = data.status;
if(!((((((((data20 === "registered") || (data20 === "preliminary")) || (data20 === "final")) || (data20 === "amended")) || (data20 === "corrected")) || (data20 === "cancelled")) || (data20 === "entered-in-error")) || (data20 === "unknown"))){
const err17 = {instancePath:instancePath+"/status",schemaPath:"#/properties/status/enum",keyword:"enum",params:{allowedValues: schema73.properties.status.enum}};
if(vErrors === null){
vErrors = [err17];
}
else {
vErrors.push(err17);
}
errors++;
}
}
if(data._status !== undefined){
if(!(validate32(data._status, {instancePath:instancePath+"/_status",parentData:data,parentDataProperty:"_status",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.category !== undefined){
let data22 = data.category;
if(Array.isArray(data22)){
if(data22.length < 1){
const err18 = {instancePath:instancePath+"/category",schemaPath:"#/properties/category/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err18];
}
else {
vErrors.push(err18);
}
errors++;
}
const len6 = data22.length;
for(let i6=0; i6<len6; i6++){
if(!(validate106(data22[i6], {instancePath:instancePath+"/category/" + i6,parentData:data22,parentDataProperty:i6,rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
}
else {
const err19 = {instancePath:instancePath+"/category",schemaPath:"#/properties/category/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err19];
}
else {
vErrors.push(err19);
}
errors++;
}
}
if(data.code !== undefined){
if(!(validate106(data.code, {instancePath:instancePath+"/code",parentData:data,parentDataProperty:"code",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.subject !== undefined){
if(!(validate97(data.subject, {instancePath:instancePath+"/subject",parentData:data,parentDataProperty:"subject",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
if(data.focus !== undefined){
let data26 = data.focus;
if(Array.isArray(data26)){
if(data26.length < 1){
const err20 = {instancePath:instancePath+"/focus",schemaPath:"#/properties/focus/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err20];
}
else {
vErrors.push(err20);
}
errors++;
}
const len7 = data26.length;
for(let i7=0; i7<len7; i7++){
if(!(validate97(data26[i7], {instancePath:instancePath+"/focus/" + i7,parentData:data26,parentDataProperty:i7,rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
}
else {
const err21 = {instancePath:instancePath+"/focus",schemaPath:"#/properties/focus/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err21];
}
else {
vErrors.push(err21);
}
errors++;
}
}
if(data.encounter !== undefined){
if(!(validate97(data.encounter, {instancePath:instancePath+"/encounter",parentData:data,parentDataProperty:"encounter",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
if(data.effectiveDateTime !== undefined){
let data29 = data.effectiveDateTime;
if(typeof data29 === "string"){
if(!pattern7.test(data29)){
const err22 = {instancePath:instancePath+"/effectiveDateTime",schemaPath:"#/properties/effectiveDateTime/pattern",keyword:"pattern",params:{pattern: "^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1])(T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00)))?)?)?$"}};
if(vErrors === null){
vErrors = [err22];
}
else {
vErrors.push(err22);
}
errors++;
}
}
else {
const err23 = {instancePath:instancePath+"/effectiveDateTime",schemaPath:"#/properties/effectiveDateTime/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err23];
}
else {
vErrors.push(err23);
}
errors++;
}
}
if(data._effectiveDateTime !== undefined){
if(!(validate32(data._effectiveDateTime, {instancePath:instancePath+"/_effectiveDateTime",parentData:data,parentDataProperty:"_effectiveDateTime",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.effectivePeriod !== undefined){
if(!(validate72(data.effectivePeriod, {instancePath:instancePath+"/effectivePeriod",parentData:data,parentDataProperty:"effectivePeriod",rootData}))){
vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
errors = vErrors.length;
}
}
if(data.effectiveTiming !== undefined){
if(!(validate290(data.effectiveTiming, {instancePath:instancePath+"/effectiveTiming",parentData:data,parentDataProperty:"effectiveTiming",rootData}))){
vErrors = vErrors === null ? validate290.errors : vErrors.concat(validate290.errors);
errors = vErrors.length;
}
}
if(data.effectiveInstant !== undefined){
let data33 = data.effectiveInstant;
if(typeof data33 === "string"){
if(!pattern9.test(data33)){
const err24 = {instancePath:instancePath+"/effectiveInstant",schemaPath:"#/properties/effectiveInstant/pattern",keyword:"pattern",params:{pattern: "^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)-(0[1-9]|1[0-2])-(0[1-9]|[1-2][0-9]|3[0-1])T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00))$"}};
if(vErrors === null){
vErrors = [err24];
}
else {
vErrors.push(err24);
}
errors++;
}
}
else {
const err25 = {instancePath:instancePath+"/effectiveInstant",schemaPath:"#/properties/effectiveInstant/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err25];
}
else {
vErrors.push(err25);
}
errors++;
}
}
if(data._effectiveInstant !== undefined){
if(!(validate32(data._effectiveInstant, {instancePath:instancePath+"/_effectiveInstant",parentData:data,parentDataProperty:"_effectiveInstant",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.issued !== undefined){
if(!(validate278(data.issued, {instancePath:instancePath+"/issued",parentData:data,parentDataProperty:"issued",rootData}))){
vErrors = vErrors === null ? validate278.errors : vErrors.concat(validate278.errors);
errors = vErrors.length;
}
}
if(data._issued !== undefined){
if(!(validate32(data._issued, {instancePath:instancePath+"/_issued",parentData:data,parentDataProperty:"_issued",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.performer !== undefined){
let data37 = data.performer;
if(Array.isArray(data37)){
if(data37.length < 1){
const err26 = {instancePath:instancePath+"/performer",schemaPath:"#/properties/performer/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err26];
}
else {
vErrors.push(err26);
}
errors++;
}
const len8 = data37.length;
for(let i8=0; i8<len8; i8++){
if(!(validate97(data37[i8], {instancePath:instancePath+"/performer/" + i8,parentData:data37,parentDataProperty:i8,rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
}
else {
const err27 = {instancePath:instancePath+"/performer",schemaPath:"#/properties/performer/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err27];
}
else {
vErrors.push(err27);
}
errors++;
}
}
if(data.valueQuantity !== undefined){
if(!(validate236(data.valueQuantity, {instancePath:instancePath+"/valueQuantity",parentData:data,parentDataProperty:"valueQuantity",rootData}))){
vErrors = vErrors === null ? validate236.errors : vErrors.concat(validate236.errors);
errors = vErrors.length;
}
}
if(data.valueCodeableConcept !== undefined){
if(!(validate106(data.valueCodeableConcept, {instancePath:instancePath+"/valueCodeableConcept",parentData:data,parentDataProperty:"valueCodeableConcept",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.valueString !== undefined){
let data41 = data.valueString;
if(typeof data41 === "string"){
if(!pattern1.test(data41)){
const err28 = {instancePath:instancePath+"/valueString",schemaPath:"#/properties/valueString/pattern",keyword:"pattern",params:{pattern: "^[ \\r\\n\\t\\S]+$"}};
if(vErrors === null){
vErrors = [err28];
}
else {
vErrors.push(err28);
}
errors++;
}
}
else {
const err29 = {instancePath:instancePath+"/valueString",schemaPath:"#/properties/valueString/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err29];
}
else {
vErrors.push(err29);
}
errors++;
}
}
if(data._valueString !== undefined){
if(!(validate32(data._valueString, {instancePath:instancePath+"/_valueString",parentData:data,parentDataProperty:"_valueString",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueBoolean !== undefined){
if(typeof data.valueBoolean !== "boolean"){
const err30 = {instancePath:instancePath+"/valueBoolean",schemaPath:"#/properties/valueBoolean/type",keyword:"type",params:{type: "boolean"}};
if(vErrors === null){
vErrors = [err30];
}
else {
vErrors.push(err30);
}
errors++;
}
}
if(data._valueBoolean !== undefined){
if(!(validate32(data._valueBoolean, {instancePath:instancePath+"/_valueBoolean",parentData:data,parentDataProperty:"_valueBoolean",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueInteger !== undefined){
let data45 = data.valueInteger;
if(!((typeof data45 == "number") && (isFinite(data45)))){
const err31 = {instancePath:instancePath+"/valueInteger",schemaPath:"#/properties/valueInteger/type",keyword:"type",params:{type: "number"}};
if(vErrors === null){
vErrors = [err31];
}
else {
vErrors.push(err31);
}
errors++;
}
}
if(data._valueInteger !== undefined){
if(!(validate32(data._valueInteger, {instancePath:instancePath+"/_valueInteger",parentData:data,parentDataProperty:"_valueInteger",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueRange !== undefined){
if(!(validate248(data.valueRange, {instancePath:instancePath+"/valueRange",parentData:data,parentDataProperty:"valueRange",rootData}))){
vErrors = vErrors === null ? validate248.errors : vErrors.concat(validate248.errors);
errors = vErrors.length;
}
}
if(data.valueRatio !== undefined){
if(!(validate253(data.valueRatio, {instancePath:instancePath+"/valueRatio",parentData:data,parentDataProperty:"valueRatio",rootData}))){
vErrors = vErrors === null ? validate253.errors : vErrors.concat(validate253.errors);
errors = vErrors.length;
}
}
if(data.valueSampledData !== undefined){
if(!(validate259(data.valueSampledData, {instancePath:instancePath+"/valueSampledData",parentData:data,parentDataProperty:"valueSampledData",rootData}))){
vErrors = vErrors === null ? validate259.errors : vErrors.concat(validate259.errors);
errors = vErrors.length;
}
}
if(data.valueTime !== undefined){
let data50 = data.valueTime;
if(typeof data50 === "string"){
if(!pattern13.test(data50)){
const err32 = {instancePath:instancePath+"/valueTime",schemaPath:"#/properties/valueTime/pattern",keyword:"pattern",params:{pattern: "^([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?$"}};
if(vErrors === null){
vErrors = [err32];
}
else {
vErrors.push(err32);
}
errors++;
}
}
else {
const err33 = {instancePath:instancePath+"/valueTime",schemaPath:"#/properties/valueTime/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err33];
}
else {
vErrors.push(err33);
}
errors++;
}
}
if(data._valueTime !== undefined){
if(!(validate32(data._valueTime, {instancePath:instancePath+"/_valueTime",parentData:data,parentDataProperty:"_valueTime",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueDateTime !== undefined){
let data52 = data.valueDateTime;
if(typeof data52 === "string"){
if(!pattern7.test(data52)){
const err34 = {instancePath:instancePath+"/valueDateTime",schemaPath:"#/properties/valueDateTime/pattern",keyword:"pattern",params:{pattern: "^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1])(T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00)))?)?)?$"}};
if(vErrors === null){
vErrors = [err34];
}
else {
vErrors.push(err34);
}
errors++;
}
}
else {
const err35 = {instancePath:instancePath+"/valueDateTime",schemaPath:"#/properties/valueDateTime/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err35];
}
else {
vErrors.push(err35);
}
errors++;
}
}
if(data._valueDateTime !== undefined){
if(!(validate32(data._valueDateTime, {instancePath:instancePath+"/_valueDateTime",parentData:data,parentDataProperty:"_valueDateTime",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valuePeriod !== undefined){
if(!(validate72(data.valuePeriod, {instancePath:instancePath+"/valuePeriod",parentData:data,parentDataProperty:"valuePeriod",rootData}))){
vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
errors = vErrors.length;
}
}
if(data.dataAbsentReason !== undefined){
if(!(validate106(data.dataAbsentReason, {instancePath:instancePath+"/dataAbsentReason",parentData:data,parentDataProperty:"dataAbsentReason",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.interpretation !== undefined){
let data56 = data.interpretation;
if(Array.isArray(data56)){
if(data56.length < 1){
const err36 = {instancePath:instancePath+"/interpretation",schemaPath:"#/properties/interpretation/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err36];
}
else {
vErrors.push(err36);
}
errors++;
}
const len9 = data56.length;
for(let i9=0; i9<len9; i9++){
if(!(validate106(data56[i9], {instancePath:instancePath+"/interpretation/" + i9,parentData:data56,parentDataProperty:i9,rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
}
else {
const err37 = {instancePath:instancePath+"/interpretation",schemaPath:"#/properties/interpretation/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err37];
}
else {
vErrors.push(err37);
}
errors++;
}
}
if(data.note !== undefined){
let data58 = data.note;
if(Array.isArray(data58)){
if(data58.length < 1){
const err38 = {instancePath:instancePath+"/note",schemaPath:"#/properties/note/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err38];
}
else {
vErrors.push(err38);
}
errors++;
}
const len10 = data58.length;
for(let i10=0; i10<len10; i10++){
if(!(validate95(data58[i10], {instancePath:instancePath+"/note/" + i10,parentData:data58,parentDataProperty:i10,rootData}))){
vErrors = vErrors === null ? validate95.errors : vErrors.concat(validate95.errors);
errors = vErrors.length;
}
}
}
else {
const err39 = {instancePath:instancePath+"/note",schemaPath:"#/properties/note/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err39];
}
else {
vErrors.push(err39);
}
errors++;
}
}
if(data.bodySite !== undefined){
if(!(validate106(data.bodySite, {instancePath:instancePath+"/bodySite",parentData:data,parentDataProperty:"bodySite",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.method !== undefined){
if(!(validate106(data.method, {instancePath:instancePath+"/method",parentData:data,parentDataProperty:"method",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.specimen !== undefined){
if(!(validate97(data.specimen, {instancePath:instancePath+"/specimen",parentData:data,parentDataProperty:"specimen",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
if(data.device !== undefined){
if(!(validate97(data.device, {instancePath:instancePath+"/device",parentData:data,parentDataProperty:"device",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
if(data.referenceRange !== undefined){
let data64 = data.referenceRange;
if(Array.isArray(data64)){
if(data64.length < 1){
const err40 = {instancePath:instancePath+"/referenceRange",schemaPath:"#/properties/referenceRange/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err40];
}
else {
vErrors.push(err40);
}
errors++;
}
const len11 = data64.length;
for(let i11=0; i11<len11; i11++){
if(!(validate659(data64[i11], {instancePath:instancePath+"/referenceRange/" + i11,parentData:data64,parentDataProperty:i11,rootData}))){
vErrors = vErrors === null ? validate659.errors : vErrors.concat(validate659.errors);
errors = vErrors.length;
}
}
}
else {
const err41 = {instancePath:instancePath+"/referenceRange",schemaPath:"#/properties/referenceRange/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err41];
}
else {
vErrors.push(err41);
}
errors++;
}
}
if(data.hasMember !== undefined){
let data66 = data.hasMember;
if(Array.isArray(data66)){
if(data66.length < 1){
const err42 = {instancePath:instancePath+"/hasMember",schemaPath:"#/properties/hasMember/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err42];
}
else {
vErrors.push(err42);
}
errors++;
}
const len12 = data66.length;
for(let i12=0; i12<len12; i12++){
if(!(validate97(data66[i12], {instancePath:instancePath+"/hasMember/" + i12,parentData:data66,parentDataProperty:i12,rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
}
else {
const err43 = {instancePath:instancePath+"/hasMember",schemaPath:"#/properties/hasMember/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err43];
}
else {
vErrors.push(err43);
}
errors++;
}
}
if(data.derivedFrom !== undefined){
let data68 = data.derivedFrom;
if(Array.isArray(data68)){
if(data68.length < 1){
const err44 = {instancePath:instancePath+"/derivedFrom",schemaPath:"#/properties/derivedFrom/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err44];
}
else {
vErrors.push(err44);
}
errors++;
}
const len13 = data68.length;
for(let i13=0; i13<len13; i13++){
if(!(validate97(data68[i13], {instancePath:instancePath+"/derivedFrom/" + i13,parentData:data68,parentDataProperty:i13,rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
}
else {
const err45 = {instancePath:instancePath+"/derivedFrom",schemaPath:"#/properties/derivedFrom/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err45];
}
else {
vErrors.push(err45);
}
errors++;
}
}
if(data.component !== undefined){
let data70 = data.component;
if(Array.isArray(data70)){
if(data70.length < 1){
const err46 = {instancePath:instancePath+"/component",schemaPath:"#/properties/component/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err46];
}
else {
vErrors.push(err46);
}
errors++;
}
const len14 = data70.length;
for(let i14=0; i14<len14; i14++){
if(!(validate673(data70[i14], {instancePath:instancePath+"/component/" + i14,parentData:data70,parentDataProperty:i14,rootData}))){
vErrors = vErrors === null ? validate673.errors : vErrors.concat(validate673.errors);
errors = vErrors.length;
}
}
}
else {
const err47 = {instancePath:instancePath+"/component",schemaPath:"#/properties/component/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err47];
}
else {
vErrors.push(err47);
}
errors++;
}
}
let count0 = 0;
if(data["effectiveDateTime"] !== undefined){
count0++;
}
if(data["effectivePeriod"] !== undefined){
count0++;
}
if(data["effectiveTiming"] !== undefined){
count0++;
}
if(data["effectiveInstant"] !== undefined){
count0++;
}
if(count0 > 1){
const err48 = {instancePath,schemaPath:"#/choices",keyword:"choices",params:{}};
if(vErrors === null){
vErrors = [err48];
}
else {
vErrors.push(err48);
}
errors++;
}
let count1 = 0;
if(data["valueQuantity"] !== undefined){
count1++;
}
if(data["valueCodeableConcept"] !== undefined){
count1++;
}
if(data["valueString"] !== undefined){
count1++;
}
if(data["valueBoolean"] !== undefined){
count1++;
}
if(data["valueInteger"] !== undefined){
count1++;
}
if(data["valueRange"] !== undefined){
count1++;
}
if(data["valueRatio"] !== undefined){
count1++;
}
if(data["valueSampledData"] !== undefined){
count1++;
}
if(data["valueTime"] !== undefined){
count1++;
}
if(data["valueDateTime"] !== undefined){
count1++;
}
if(data["valuePeriod"] !== undefined){
count1++;
}
if(count1 > 1){
const err49 = {instancePath,schemaPath:"#/choices",keyword:"choices",params:{}};
if(vErrors === null){
vErrors = [err49];
}
else {
vErrors.push(err49);
}
errors++;
}
}
else {
const err50 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err50];
}
else {
vErrors.push(err50);
}
errors++;
}
validate615.errors = vErrors;
return errors === 0;
}

const schema76 = {"type":"object","properties":{"resourceType":{"const":"Specimen"},"id":{"$ref":"#/definitions/id"},"meta":{"$ref":"#/definitions/Meta"},"implicitRules":{"$ref":"#/definitions/uri"},"_implicitRules":{"$ref":"#/definitions/Element"},"language":{"$ref":"#/definitions/code"},"_language":{"$ref":"#/definitions/Element"},"text":{"$ref":"#/definitions/Narrative"},"contained":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/ResourceList"}},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"identifier":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Identifier"}},"accessionIdentifier":{"$ref":"#/definitions/Identifier"},"status":{"enum":["available","unavailable","unsatisfactory","entered-in-error"]},"_status":{"$ref":"#/definitions/Element"},"type":{"$ref":"#/definitions/CodeableConcept"},"subject":{"$ref":"#/definitions/Reference"},"receivedTime":{"$ref":"#/definitions/dateTime"},"_receivedTime":{"$ref":"#/definitions/Element"},"parent":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"request":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"collection":{"$ref":"#/definitions/Specimen_Collection"},"processing":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Specimen_Processing"}},"container":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Specimen_Container"}},"condition":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"note":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Annotation"}}},"required":["resourceType"],"additionalProperties":false};
const schema77 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"collector":{"$ref":"#/definitions/Reference"},"collectedDateTime":{"type":"string","pattern":"^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1])(T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00)))?)?)?$"},"_collectedDateTime":{"$ref":"#/definitions/Element"},"collectedPeriod":{"$ref":"#/definitions/Period"},"duration":{"$ref":"#/definitions/Duration"},"quantity":{"$ref":"#/definitions/Quantity"},"method":{"$ref":"#/definitions/CodeableConcept"},"bodySite":{"$ref":"#/definitions/CodeableConcept"},"fastingStatusCodeableConcept":{"$ref":"#/definitions/CodeableConcept"},"fastingStatusDuration":{"$ref":"#/definitions/Duration"}},"choices":[{"element":"collected[x]","properties":["collectedDateTime","collectedPeriod"],"required":false},{"element":"fastingStatus[x]","properties":["fastingStatusCodeableConcept","fastingStatusDuration"],"required":false}],"additionalProperties":false};

function validate712(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
for(const key0 in data){
if(!(func2.call(schema77.properties, key0))){
const err0 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err1 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(validate28(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err2 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.modifierExtension !== undefined){
let data3 = data.modifierExtension;
if(Array.isArray(data3)){
if(data3.length < 1){
const err3 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
const len1 = data3.length;
for(let i1=0; i1<len1; i1++){
if(!(validate28(data3[i1], {instancePath:instancePath+"/modifierExtension/" + i1,parentData:data3,parentDataProperty:i1,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err4 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.collector !== undefined){
if(!(validate97(data.collector, {instancePath:instancePath+"/collector",parentData:data,parentDataProperty:"collector",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
if(data.collectedDateTime !== undefined){
let data6 = data.collectedDateTime;
if(typeof data6 === "string"){
if(!pattern7.test(data6)){
const err5 = {instancePath:instancePath+"/collectedDateTime",schemaPath:"#/properties/collectedDateTime/pattern",keyword:"pattern",params:{pattern: "^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1])(T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00)))?)?)?$"}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
else {
const err6 = {instancePath:instancePath+"/collectedDateTime",schemaPath:"#/properties/collectedDateTime/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
if(data._collectedDateTime !== undefined){
if(!(validate32(data._collectedDateTime, {instancePath:instancePath+"/_collectedDateTime",parentData:data,parentDataProperty:"_collectedDateTime",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.collectedPeriod !== undefined){
if(!(validate72(data.collectedPeriod, {instancePath:instancePath+"/collectedPeriod",parentData:data,parentDataProperty:"collectedPeriod",rootData}))){
vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
errors = vErrors.length;
}
}
if(data.duration !== undefined){
if(!(validate200(data.duration, {instancePath:instancePath+"/duration",parentData:data,parentDataProperty:"duration",rootData}))){
vErrors = vErrors === null ? validate200.errors : vErrors.concat(validate200.errors);
errors = vErrors.length;
}
}
if(data.quantity !== undefined){
if(!(validate236(data.quantity, {instancePath:instancePath+"/quantity",parentData:data,parentDataProperty:"quantity",rootData}))){
vErrors = vErrors === null ? validate236.errors : vErrors.concat(validate236.errors);
errors = vErrors.length;
}
}
if(data.method !== undefined){
if(!(validate106(data.method, {instancePath:instancePath+"/method",parentData:data,parentDataProperty:"method",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.bodySite !== undefined){
if(!(validate106(data.bodySite, {instancePath:instancePath+"/bodySite",parentData:data,parentDataProperty:"bodySite",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.fastingStatusCodeableConcept !== undefined){
if(!(validate106(data.fastingStatusCodeableConcept, {instancePath:instancePath+"/fastingStatusCodeableConcept",parentData:data,parentDataProperty:"fastingStatusCodeableConcept",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.fastingStatusDuration !== undefined){
if(!(validate200(data.fastingStatusDuration, {instancePath:instancePath+"/fastingStatusDuration",parentData:data,parentDataProperty:"fastingStatusDuration",rootData}))){
vErrors = vErrors === null ? validate200.errors : vErrors.concat(validate200.errors);
errors = vErrors.length;
}
}
let count0 = 0;
if(data["collectedDateTime"] !== undefined){
count0++;
}
if(data["collectedPeriod"] !== undefined){
count0++;
}
if(count0 > 1){
const err7 = {instancePath,schemaPath:"#/choices",keyword:"choices",params:{}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
let count1 = 0;
if(data["fastingStatusCodeableConcept"] !== undefined){
count1++;
}
if(data["fastingStatusDuration"] !== undefined){
count1++;
}
if(count1 > 1){
const err8 = {instancePath,schemaPath:"#/choices",keyword:"choices",params:{}};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
}
else {
const err9 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
validate712.errors = vErrors;
return errors === 0;
}

const schema78 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"description":{"$ref":"#/definitions/string"},"_description":{"$ref":"#/definitions/Element"},"procedure":{"$ref":"#/definitions/CodeableConcept"},"additive":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"timeDateTime":{"type":"string","pattern":"^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1])(T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00)))?)?)?$"},"_timeDateTime":{"$ref":"#/definitions/Element"},"timePeriod":{"$ref":"#/definitions/Period"}},"choices":[{"element":"time[x]","properties":["timeDateTime","timePeriod"],"required":false}],"additionalProperties":false};

function validate726(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
for(const key0 in data){
if(!(func2.call(schema78.properties, key0))){
const err0 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err1 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(validate28(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err2 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.modifierExtension !== undefined){
let data3 = data.modifierExtension;
if(Array.isArray(data3)){
if(data3.length < 1){
const err3 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
const len1 = data3.length;
for(let i1=0; i1<len1; i1++){
if(!(validate28(data3[i1], {instancePath:instancePath+"/modifierExtension/" + i1,parentData:data3,parentDataProperty:i1,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err4 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.description !== undefined){
if(!(validate26(data.description, {instancePath:instancePath+"/description",parentData:data,parentDataProperty:"description",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._description !== undefined){
if(!(validate32(data._description, {instancePath:instancePath+"/_description",parentData:data,parentDataProperty:"_description",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.procedure !== undefined){
if(!(validate106(data.procedure, {instancePath:instancePath+"/procedure",parentData:data,parentDataProperty:"procedure",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.additive !== undefined){
let data8 = data.additive;
if(Array.isArray(data8)){
if(data8.length < 1){
const err5 = {instancePath:instancePath+"/additive",schemaPath:"#/properties/additive/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
const len2 = data8.length;
for(let i2=0; i2<len2; i2++){
if(!(validate97(data8[i2], {instancePath:instancePath+"/additive/" + i2,parentData:data8,parentDataProperty:i2,rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
}
else {
const err6 = {instancePath:instancePath+"/additive",schemaPath:"#/properties/additive/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
if(data.timeDateTime !== undefined){
let data10 = data.timeDateTime;
if(typeof data10 === "string"){
if(!pattern7.test(data10)){
const err7 = {instancePath:instancePath+"/timeDateTime",schemaPath:"#/properties/timeDateTime/pattern",keyword:"pattern",params:{pattern: "^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1])(T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00)))?)?)?$"}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
}
else {
const err8 = {instancePath:instancePath+"/timeDateTime",schemaPath:"#/properties/timeDateTime/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
}
if(data._timeDateTime !== undefined){
if(!(validate32(data._timeDateTime, {instancePath:instancePath+"/_timeDateTime",parentData:data,parentDataProperty:"_timeDateTime",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.timePeriod !== undefined){
if(!(validate72(data.timePeriod, {instancePath:instancePath+"/timePeriod",parentData:data,parentDataProperty:"timePeriod",rootData}))){
vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
errors = vErrors.length;
}
}
let count0 = 0;
if(data["timeDateTime"] !== undefined){
count0++;
}
if(data["timePeriod"] !== undefined){
count0++;
}
if(count0 > 1){
const err9 = {instancePath,schemaPath:"#/choices",keyword:"choices",params:{}};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
}
else {
const err10 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err10];
}
else {
vErrors.push(err10);
}
errors++;
}
validate726.errors = vErrors;
return errors === 0;
}

const schema79 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"identifier":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Identifier"}},"description":{"$ref":"#/definitions/string"},"_description":{"$ref":"#/definitions/Element"},"type":{"$ref":"#/definitions/CodeableConcept"},"capacity":{"$ref":"#/definitions/Quantity"},"specimenQuantity":{"$ref":"#/definitions/Quantity"},"additiveCodeableConcept":{"$ref":"#/definitions/CodeableConcept"},"additiveReference":{"$ref":"#/definitions/Reference"}},"choices":[{"element":"additive[x]","properties":["additiveCodeableConcept","additiveReference"],"required":false}],"additionalProperties":false};

function validate737(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
for(const key0 in data){
if(!(func2.call(schema79.properties, key0))){
const err0 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err1 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(validate28(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err2 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.modifierExtension !== undefined){
let data3 = data.modifierExtension;
if(Array.isArray(data3)){
if(data3.length < 1){
const err3 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
const len1 = data3.length;
for(let i1=0; i1<len1; i1++){
if(!(validate28(data3[i1], {instancePath:instancePath+"/modifierExtension/" + i1,parentData:data3,parentDataProperty:i1,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err4 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.identifier !== undefined){
let data5 = data.identifier;
if(Array.isArray(data5)){
if(data5.length < 1){
const err5 = {instancePath:instancePath+"/identifier",schemaPath:"#/properties/identifier/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
const len2 = data5.length;
for(let i2=0; i2<len2; i2++){
if(!(validate103(data5[i2], {instancePath:instancePath+"/identifier/" + i2,parentData:data5,parentDataProperty:i2,rootData}))){
vErrors = vErrors === null ? validate103.errors : vErrors.concat(validate103.errors);
errors = vErrors.length;
}
}
}
else {
const err6 = {instancePath:instancePath+"/identifier",schemaPath:"#/properties/identifier/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
if(data.description !== undefined){
if(!(validate26(data.description, {instancePath:instancePath+"/description",parentData:data,parentDataProperty:"description",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._description !== undefined){
if(!(validate32(data._description, {instancePath:instancePath+"/_description",parentData:data,parentDataProperty:"_description",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.type !== undefined){
if(!(validate106(data.type, {instancePath:instancePath+"/type",parentData:data,parentDataProperty:"type",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.capacity !== undefined){
if(!(validate236(data.capacity, {instancePath:instancePath+"/capacity",parentData:data,parentDataProperty:"capacity",rootData}))){
vErrors = vErrors === null ? validate236.errors : vErrors.concat(validate236.errors);
errors = vErrors.length;
}
}
if(data.specimenQuantity !== undefined){
if(!(validate236(data.specimenQuantity, {instancePath:instancePath+"/specimenQuantity",parentData:data,parentDataProperty:"specimenQuantity",rootData}))){
vErrors = vErrors === null ? validate236.errors : vErrors.concat(validate236.errors);
errors = vErrors.length;
}
}
if(data.additiveCodeableConcept !== undefined){
if(!(validate106(data.additiveCodeableConcept, {instancePath:instancePath+"/additiveCodeableConcept",parentData:data,parentDataProperty:"additiveCodeableConcept",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.additiveReference !== undefined){
if(!(validate97(data.additiveReference, {instancePath:instancePath+"/additiveReference",parentData:data,parentDataProperty:"additiveReference",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
let count0 = 0;
if(data["additiveCodeableConcept"] !== undefined){
count0++;
}
if(data["additiveReference"] !== undefined){
count0++;
}
if(count0 > 1){
const err7 = {instancePath,schemaPath:"#/choices",keyword:"choices",params:{}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
}
else {
const err8 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
validate737.errors = vErrors;
return errors === 0;
}


function validate693(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.resourceType === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "resourceType"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
for(const key0 in data){
if(!(func2.call(schema76.properties, key0))){
const err1 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
if(data.resourceType !== undefined){
if("Specimen" !== data.resourceType){
const err2 = {instancePath:instancePath+"/resourceType",schemaPath:"#/properties/resourceType/const",keyword:"const",params:{allowedValue: "Specimen"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate23(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate23.errors : vErrors.concat(validate23.errors);
errors = vErrors.length;
}
}
if(data.meta !== undefined){
if(!(validate25(data.meta, {instancePath:instancePath+"/meta",parentData:data,parentDataProperty:"meta",rootData}))){
vErrors = vErrors === null ? validate25.errors : vErrors.concat(validate25.errors);
errors = vErrors.length;
}
}
if(data.implicitRules !== undefined){
if(!(validate30(data.implicitRules, {instancePath:instancePath+"/implicitRules",parentData:data,parentDataProperty:"implicitRules",rootData}))){
vErrors = vErrors === null ? validate30.errors : vErrors.concat(validate30.errors);
errors = vErrors.length;
}
}
if(data._implicitRules !== undefined){
if(!(validate32(data._implicitRules, {instancePath:instancePath+"/_implicitRules",parentData:data,parentDataProperty:"_implicitRules",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.language !== undefined){
if(!(validate91(data.language, {instancePath:instancePath+"/language",parentData:data,parentDataProperty:"language",rootData}))){
vErrors = vErrors === null ? validate91.errors : vErrors.concat(validate91.errors);
errors = vErrors.length;
}
}
if(data._language !== undefined){
if(!(validate32(data._language, {instancePath:instancePath+"/_language",parentData:data,parentDataProperty:"_language",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.text !== undefined){
if(!(validate511(data.text, {instancePath:instancePath+"/text",parentData:data,parentDataProperty:"text",rootData}))){
vErrors = vErrors === null ? validate511.errors : vErrors.concat(validate511.errors);
errors = vErrors.length;
}
}
if(data.contained !== undefined){
let data8 = data.contained;
if(Array.isArray(data8)){
if(data8.length < 1){
const err3 = {instancePath:instancePath+"/contained",schemaPath:"#/properties/contained/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
const len0 = data8.length;
for(let i0=0; i0<len0; i0++){
if(!(wrapper40.validate(data8[i0], {instancePath:instancePath+"/contained/" + i0,parentData:data8,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? wrapper40.validate.errors : vErrors.concat(wrapper40.validate.errors);
errors = vErrors.length;
}
}
}
else {
const err4 = {instancePath:instancePath+"/contained",schemaPath:"#/properties/contained/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.extension !== undefined){
let data10 = data.extension;
if(Array.isArray(data10)){
if(data10.length < 1){
const err5 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
const len1 = data10.length;
for(let i1=0; i1<len1; i1++){
if(!(validate28(data10[i1], {instancePath:instancePath+"/extension/" + i1,parentData:data10,parentDataProperty:i1,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err6 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
if(data.modifierExtension !== undefined){
let data12 = data.modifierExtension;
if(Array.isArray(data12)){
if(data12.length < 1){
const err7 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
const len2 = data12.length;
for(let i2=0; i2<len2; i2++){
if(!(validate28(data12[i2], {instancePath:instancePath+"/modifierExtension/" + i2,parentData:data12,parentDataProperty:i2,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err8 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
}
if(data.identifier !== undefined){
let data14 = data.identifier;
if(Array.isArray(data14)){
if(data14.length < 1){
const err9 = {instancePath:instancePath+"/identifier",schemaPath:"#/properties/identifier/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
const len3 = data14.length;
for(let i3=0; i3<len3; i3++){
if(!(validate103(data14[i3], {instancePath:instancePath+"/identifier/" + i3,parentData:data14,parentDataProperty:i3,rootData}))){
vErrors = vErrors === null ? validate103.errors : vErrors.concat(validate103.errors);
errors = vErrors.length;
}
}
}
else {
const err10 = {instancePath:instancePath+"/identifier",schemaPath:"#/properties/identifier/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err10];
}
else {
vErrors.push(err10);
}
errors++;
}
}
if(data.accessionIdentifier !== undefined){
if(!(validate103(data.accessionIdentifier, {instancePath:instancePath+"/accessionIdentifier",parentData:data,parentDataProperty:"accessionIdentifier",rootData}))){
vErrors = vErrors === null ? validate103.errors : vErrors.concat(validate103.errors);
errors = vErrors.length;
}
}
if(data.status !== undefined){
let data17 = data.status;
if(!((((data17 === "available") || (data17 === "unavailable")) || (data17 === "unsatisfactory")) || (data17 === "entered-in-error"))){
const err11 = {instancePath:instancePath+"/status",schemaPath:"#/properties/status/enum",keyword:"enum",params:{allowedValues: schema76.properties.status.enum}};
if(vErrors === null){
vErrors = [err11];
}
else {
vErrors.push(err11);
}
errors++;
}
}
if(data._status !== undefined){
if(!(validate32(data._status, {instancePath:instancePath+"/_status",parentData:data,parentDataProperty:"_status",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.type !== undefined){
if(!(validate106(data.type, {instancePath:instancePath+"/type",parentData:data,parentDataProperty:"type",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.subject !== undefined){
if(!(validate97(data.subject, {instancePath:instancePath+"/subject",parentData:data,parentDataProperty:"subject",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
if(data.receivedTime !== undefined){
if(!(validate74(data.receivedTime, {instancePath:instancePath+"/receivedTime",parentData:data,parentDataProperty:"receivedTime",rootData}))){
vErrors = vErrors === null ? validate74.errors : vErrors.concat(validate74.errors);
errors = vErrors.length;
}
}
if(data._receivedTime !== undefined){
if(!(validate32(data._receivedTime, {instancePath:instancePath+"/_receivedTime",parentData:data,parentDataProperty:"_receivedTime",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.parent !== undefined){
let data23 = data.parent;
if(Array.isArray(data23)){
if(data23.length < 1){
const err12 = {instancePath:instancePath+"/parent",schemaPath:"#/properties/parent/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err12];
}
else {
vErrors.push(err12);
}
errors++;
}
const len4 = data23.length;
for(let i4=0; i4<len4; i4++){
if(!(validate97(data23[i4], {instancePath:instancePath+"/parent/" + i4,parentData:data23,parentDataProperty:i4,rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
}
else {
const err13 = {instancePath:instancePath+"/parent",schemaPath:"#/properties/parent/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err13];
}
else {
vErrors.push(err13);
}
errors++;
}
}
if(data.request !== undefined){
let data25 = data.request;
if(Array.isArray(data25)){
if(data25.length < 1){
const err14 = {instancePath:instancePath+"/request",schemaPath:"#/properties/request/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err14];
}
else {
vErrors.push(err14);
}
errors++;
}
const len5 = data25.length;
for(let i5=0; i5<len5; i5++){
if(!(validate97(data25[i5], {instancePath:instancePath+"/request/" + i5,parentData:data25,parentDataProperty:i5,rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
}
else {
const err15 = {instancePath:instancePath+"/request",schemaPath:"#/properties/request/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err15];
}
else {
vErrors.push(err15);
}
errors++;
}
}
if(data.collection !== undefined){
if(!(validate712(data.collection, {instancePath:instancePath+"/collection",parentData:data,parentDataProperty:"collection",rootData}))){
vErrors = vErrors === null ? validate712.errors : vErrors.concat(validate712.errors);
errors = vErrors.length;
}
}
if(data.processing !== undefined){
let data28 = data.processing;
if(Array.isArray(data28)){
if(data28.length < 1){
const err16 = {instancePath:instancePath+"/processing",schemaPath:"#/properties/processing/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err16];
}
else {
vErrors.push(err16);
}
errors++;
}
const len6 = data28.length;
for(let i6=0; i6<len6; i6++){
if(!(validate726(data28[i6], {instancePath:instancePath+"/processing/" + i6,parentData:data28,parentDataProperty:i6,rootData}))){
vErrors = vErrors === null ? validate726.errors : vErrors.concat(validate726.errors);
errors = vErrors.length;
}
}
}
else {
const err17 = {instancePath:instancePath+"/processing",schemaPath:"#/properties/processing/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err17];
}
else {
vErrors.push(err17);
}
errors++;
}
}
if(data.container !== undefined){
let data30 = data.container;
if(Array.isArray(data30)){
if(data30.length < 1){
const err18 = {instancePath:instancePath+"/container",schemaPath:"#/properties/container/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err18];
}
else {
vErrors.push(err18);
}
errors++;
}
const len7 = data30.length;
for(let i7=0; i7<len7; i7++){
if(!(validate737(data30[i7], {instancePath:instancePath+"/container/" + i7,parentData:data30,parentDataProperty:i7,rootData}))){
vErrors = vErrors === null ? validate737.errors : vErrors.concat(validate737.errors);
errors = vErrors.length;
}
}
}
else {
const err19 = {instancePath:instancePath+"/container",schemaPath:"#/properties/container/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err19];
}
else {
vErrors.push(err19);
}
errors++;
}
}
if(data.condition !== undefined){
let data32 = data.condition;
if(Array.isArray(data32)){
if(data32.length < 1){
const err20 = {instancePath:instancePath+"/condition",schemaPath:"#/properties/condition/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err20];
}
else {
vErrors.push(err20);
}
errors++;
}
const len8 = data32.length;
for(let i8=0; i8<len8; i8++){
if(!(validate106(data32[i8], {instancePath:instancePath+"/condition/" + i8,parentData:data32,parentDataProperty:i8,rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
}
else {
const err21 = {instancePath:instancePath+"/condition",schemaPath:"#/properties/condition/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err21];
}
else {
vErrors.push(err21);
}
errors++;
}
}
if(data.note !== undefined){
let data34 = data.note;
if(Array.isArray(data34)){
if(data34.length < 1){
const err22 = {instancePath:instancePath+"/note",schemaPath:"#/properties/note/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err22];
}
else {
vErrors.push(err22);
}
errors++;
}
const len9 = data34.length;
for(let i9=0; i9<len9; i9++){
if(!(validate95(data34[i9], {instancePath:instancePath+"/note/" + i9,parentData:data34,parentDataProperty:i9,rootData}))){
vErrors = vErrors === null ? validate95.errors : vErrors.concat(validate95.errors);
errors = vErrors.length;
}
}
}
else {
const err23 = {instancePath:instancePath+"/note",schemaPath:"#/properties/note/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err23];
}
else {
vErrors.push(err23);
}
errors++;
}
}
}
else {
const err24 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err24];
}
else {
vErrors.push(err24);
}
errors++;
}
validate693.errors = vErrors;
return errors === 0;
}

const schema80 = {"type":"object","properties":{"resourceType":{"const":"ServiceRequest"},"id":{"$ref":"#/definitions/id"},"meta":{"$ref":"#/definitions/Meta"},"implicitRules":{"$ref":"#/definitions/uri"},"_implicitRules":{"$ref":"#/definitions/Element"},"language":{"$ref":"#/definitions/code"},"_language":{"$ref":"#/definitions/Element"},"text":{"$ref":"#/definitions/Narrative"},"contained":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/ResourceList"}},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"identifier":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Identifier"}},"instantiatesCanonical":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/canonical"}},"instantiatesUri":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/uri"}},"_instantiatesUri":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Element"}},"basedOn":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"replaces":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"requisition":{"$ref":"#/definitions/Identifier"},"status":{"enum":["draft","active","on-hold","revoked","completed","entered-in-error","unknown"]},"_status":{"$ref":"#/definitions/Element"},"intent":{"enum":["proposal","plan","directive","order","original-order","reflex-order","filler-order","instance-order","option"]},"_intent":{"$ref":"#/definitions/Element"},"category":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"priority":{"enum":["routine","urgent","asap","stat"]},"_priority":{"$ref":"#/definitions/Element"},"doNotPerform":{"$ref":"#/definitions/boolean"},"_doNotPerform":{"$ref":"#/definitions/Element"},"code":{"$ref":"#/definitions/CodeableConcept"},"orderDetail":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"quantityQuantity":{"$ref":"#/definitions/Quantity"},"quantityRatio":{"$ref":"#/definitions/Ratio"},"quantityRange":{"$ref":"#/definitions/Range"},"subject":{"$ref":"#/definitions/Reference"},"encounter":{"$ref":"#/definitions/Reference"},"occurrenceDateTime":{"type":"string","pattern":"^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1])(T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00)))?)?)?$"},"_occurrenceDateTime":{"$ref":"#/definitions/Element"},"occurrencePeriod":{"$ref":"#/definitions/Period"},"occurrenceTiming":{"$ref":"#/definitions/Timing"},"asNeededBoolean":{"type":"boolean"},"_asNeededBoolean":{"$ref":"#/definitions/Element"},"asNeededCodeableConcept":{"$ref":"#/definitions/CodeableConcept"},"authoredOn":{"$ref":"#/definitions/dateTime"},"_authoredOn":{"$ref":"#/definitions/Element"},"requester":{"$ref":"#/definitions/Reference"},"performerType":{"$ref":"#/definitions/CodeableConcept"},"performer":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"locationCode":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"locationReference":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"reasonCode":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"reasonReference":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"insurance":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"supportingInfo":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"specimen":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"bodySite":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"note":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Annotation"}},"patientInstruction":{"$ref":"#/definitions/string"},"_patientInstruction":{"$ref":"#/definitions/Element"},"relevantHistory":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}}},"required":["intent","resourceType","status","subject"],"choices":[{"element":"quantity[x]","properties":["quantityQuantity","quantityRatio","quantityRange"],"required":false},{"element":"occurrence[x]","properties":["occurrenceDateTime","occurrencePeriod","occurrenceTiming"],"required":false},{"element":"asNeeded[x]","properties":["asNeededBoolean","asNeededCodeableConcept"],"required":false}],"additionalProperties":false};

function validate752(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.intent === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "intent"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.resourceType === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "resourceType"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(data.status === undefined){
const err2 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "status"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
if(data.subject === undefined){
const err3 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "subject"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
for(const key0 in data){
if(!(func2.call(schema80.properties, key0))){
const err4 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.resourceType !== undefined){
if("ServiceRequest" !== data.resourceType){
const err5 = {instancePath:instancePath+"/resourceType",schemaPath:"#/properties/resourceType/const",keyword:"const",params:{allowedValue: "ServiceRequest"}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate23(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate23.errors : vErrors.concat(validate23.errors);
errors = vErrors.length;
}
}
if(data.meta !== undefined){
if(!(validate25(data.meta, {instancePath:instancePath+"/meta",parentData:data,parentDataProperty:"meta",rootData}))){
vErrors = vErrors === null ? validate25.errors : vErrors.concat(validate25.errors);
errors = vErrors.length;
}
}
if(data.implicitRules !== undefined){
if(!(validate30(data.implicitRules, {instancePath:instancePath+"/implicitRules",parentData:data,parentDataProperty:"implicitRules",rootData}))){
vErrors = vErrors === null ? validate30.errors : vErrors.concat(validate30.errors);
errors = vErrors.length;
}
}
if(data._implicitRules !== undefined){
if(!(validate32(data._implicitRules, {instancePath:instancePath+"/_implicitRules",parentData:data,parentDataProperty:"_implicitRules",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.language !== undefined){
if(!(validate91(data.language, {instancePath:instancePath+"/language",parentData:data,parentDataProperty:"language",rootData}))){
vErrors = vErrors === null ? validate91.errors : vErrors.concat(validate91.errors);
errors = vErrors.length;
}
}
if(data._language !== undefined){
if(!(validate32(data._language, {instancePath:instancePath+"/_language",parentData:data,parentDataProperty:"_language",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.text !== undefined){
if(!(validate511(data.text, {instancePath:instancePath+"/text",parentData:data,parentDataProperty:"text",rootData}))){
vErrors = vErrors === null ? validate511.errors : vErrors.concat(validate511.errors);
errors = vErrors.length;
}
}
if(data.contained !== undefined){
let data8 = data.contained;
if(Array.isArray(data8)){
if(data8.length < 1){
const err6 = {instancePath:instancePath+"/contained",schemaPath:"#/properties/contained/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
const len0 = data8.length;
for(let i0=0; i0<len0; i0++){
if(!(wrapper40.validate(data8[i0], {instancePath:instancePath+"/contained/" + i0,parentData:data8,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? wrapper40.validate.errors : vErrors.concat(wrapper40.validate.errors);
errors = vErrors.length;
}
}
}
else {
const err7 = {instancePath:instancePath+"/contained",schemaPath:"#/properties/contained/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
}
if(data.extension !== undefined){
let data10 = data.extension;
if(Array.isArray(data10)){
if(data10.length < 1){
const err8 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
const len1 = data10.length;
for(let i1=0; i1<len1; i1++){
if(!(validate28(data10[i1], {instancePath:instancePath+"/extension/" + i1,parentData:data10,parentDataProperty:i1,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err9 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
}
if(data.modifierExtension !== undefined){
let data12 = data.modifierExtension;
if(Array.isArray(data12)){
if(data12.length < 1){
const err10 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err10];
}
else {
vErrors.push(err10);
}
errors++;
}
const len2 = data12.length;
for(let i2=0; i2<len2; i2++){
if(!(validate28(data12[i2], {instancePath:instancePath+"/modifierExtension/" + i2,parentData:data12,parentDataProperty:i2,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err11 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err11];
}
else {
vErrors.push(err11);
}
errors++;
}
}
if(data.identifier !== undefined){
let data14 = data.identifier;
if(Array.isArray(data14)){
if(data14.length < 1){
const err12 = {instancePath:instancePath+"/identifier",schemaPath:"#/properties/identifier/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err12];
}
else {
vErrors.push(err12);
}
errors++;
}
const len3 = data14.length;
for(let i3=0; i3<len3; i3++){
if(!(validate103(data14[i3], {instancePath:instancePath+"/identifier/" + i3,parentData:data14,parentDataProperty:i3,rootData}))){
vErrors = vErrors === null ? validate103.errors : vErrors.concat(validate103.errors);
errors = vErrors.length;
}
}
}
else {
const err13 = {instancePath:instancePath+"/identifier",schemaPath:"#/properties/identifier/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err13];
}
else {
vErrors.push(err13);
}
errors++;
}
}
if(data.instantiatesCanonical !== undefined){
let data16 = data.instantiatesCanonical;
if(Array.isArray(data16)){
if(data16.length < 1){
const err14 = {instancePath:instancePath+"/instantiatesCanonical",schemaPath:"#/properties/instantiatesCanonical/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err14];
}
else {
vErrors.push(err14);
}
errors++;
}
const len4 = data16.length;
for(let i4=0; i4<len4; i4++){
if(!(validate343(data16[i4], {instancePath:instancePath+"/instantiatesCanonical/" + i4,parentData:data16,parentDataProperty:i4,rootData}))){
vErrors = vErrors === null ? validate343.errors : vErrors.concat(validate343.errors);
errors = vErrors.length;
}
}
}
else {
const err15 = {instancePath:instancePath+"/instantiatesCanonical",schemaPath:"#/properties/instantiatesCanonical/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err15];
}
else {
vErrors.push(err15);
}
errors++;
}
}
if(data.instantiatesUri !== undefined){
let data18 = data.instantiatesUri;
if(Array.isArray(data18)){
if(data18.length < 1){
const err16 = {instancePath:instancePath+"/instantiatesUri",schemaPath:"#/properties/instantiatesUri/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err16];
}
else {
vErrors.push(err16);
}
errors++;
}
const len5 = data18.length;
for(let i5=0; i5<len5; i5++){
if(!(validate30(data18[i5], {instancePath:instancePath+"/instantiatesUri/" + i5,parentData:data18,parentDataProperty:i5,rootData}))){
vErrors = vErrors === null ? validate30.errors : vErrors.concat(validate30.errors);
errors = vErrors.length;
}
}
}
else {
const err17 = {instancePath:instancePath+"/instantiatesUri",schemaPath:"#/properties/instantiatesUri/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err17];
}
else {
vErrors.push(err17);
}
errors++;
}
}
if(data._instantiatesUri !== undefined){
let data20 = data._instantiatesUri;
if(Array.isArray(data20)){
if(data20.length < 1){
const err18 = {instancePath:instancePath+"/_instantiatesUri",schemaPath:"#/properties/_instantiatesUri/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err18];
}
else {
vErrors.push(err18);
}
errors++;
}
const len6 = data20.length;
for(let i6=0; i6<len6; i6++){
if(!(validate32(data20[i6], {instancePath:instancePath+"/_instantiatesUri/" + i6,parentData:data20,parentDataProperty:i6,rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
}
else {
const err19 = {instancePath:instancePath+"/_instantiatesUri",schemaPath:"#/properties/_instantiatesUri/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err19];
}
else {
vErrors.push(err19);
}
errors++;
}
}
if(data.basedOn !== undefined){
let data22 = data.basedOn;
if(Array.isArray(data22)){
if(data22.length < 1){
const err20 = {instancePath:instancePath+"/basedOn",schemaPath:"#/properties/basedOn/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err20];
}
else {
vErrors.push(err20);
}
errors++;
}
const len7 = data22.length;
for(let i7=0; i7<len7; i7++){
if(!(validate97(data22[i7], {instancePath:instancePath+"/basedOn/" + i7,parentData:data22,parentDataProperty:i7,rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
}
else {
const err21 = {instancePath:instancePath+"/basedOn",schemaPath:"#/properties/basedOn/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err21];
}
else {
vErrors.push(err21);
}
errors++;
}
}
if(data.replaces !== undefined){
let data24 = data.replaces;
if(Array.isArray(data24)){
if(data24.length < 1){
const err22 = {instancePath:instancePath+"/replaces",schemaPath:"#/properties/replaces/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err22];
}
else {
vErrors.push(err22);
}
errors++;
}
const len8 = data24.length;
for(let i8=0; i8<len8; i8++){
if(!(validate97(data24[i8], {instancePath:instancePath+"/replaces/" + i8,parentData:data24,parentDataProperty:i8,rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
}
else {
const err23 = {instancePath:instancePath+"/replaces",schemaPath:"#/properties/replaces/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err23];
}
else {
vErrors.push(err23);
}
errors++;
}
}
if(data.requisition !== undefined){
if(!(validate103(data.requisition, {instancePath:instancePath+"/requisition",parentData:data,parentDataProperty:"requisition",rootData}))){
vErrors = vErrors === null ? validate103.errors : vErrors.concat(validate103.errors);
errors = vErrors.length;
}
}
if(data.status !== undefined){
let data27 = data.status;
if(!(((((((data27 === "draft") || (data27 === "active")) || (data27 === "on-hold")) || (data27 === "revoked")) || (data27 === "completed")) || (data27 === "entered-in-error")) || (data27 === "unknown"))){
const err24 = {instancePath:instancePath+"/status",schemaPath:"#/properties/status/enum",keyword:"enum",params:{allowedValues: schema80.properties.status.enum}};
if(vErrors === null){
vErrors = [err24];
}
else {
vErrors.push(err24);
}
errors++;
}
}
if(data._status !== undefined){
if(!(validate32(data._status, {instancePath:instancePath+"/_status",parentData:data,parentDataProperty:"_status",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.intent !== undefined){
let data29 = data.intent;
if(!(((((((((data29 === "proposal") || (data29 === "plan")) || (data29 === "directive")) || (data29 === "order")) || (data29 === "original-order")) || (data29 === "reflex-order")) || (data29 === "filler-order")) || (data29 === "instance-order")) || (data29 === "option"))){
const err25 = {instancePath:instancePath+"/intent",schemaPath:"#/properties/intent/enum",keyword:"enum",params:{allowedValues: schema80.properties.intent.enum}};
if(vErrors === null){
vErrors = [err25];
}
else {
vErrors.push(err25);
}
errors++;
}
}
if(data._intent !== undefined){
if(!(validate32(data._intent, {instancePath:instancePath+"/_intent",parentData:data,parentDataProperty:"_intent",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.category !== undefined){
let data31 = data.category;
if(Array.isArray(data31)){
if(data31.length < 1){
const err26 = {instancePath:instancePath+"/category",schemaPath:"#/properties/category/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err26];
}
else {
vErrors.push(err26);
}
errors++;
}
const len9 = data31.length;
for(let i9=0; i9<len9; i9++){
if(!(validate106(data31[i9], {instancePath:instancePath+"/category/" + i9,parentData:data31,parentDataProperty:i9,rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
}
else {
const err27 = {instancePath:instancePath+"/category",schemaPath:"#/properties/category/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err27];
}
else {
vErrors.push(err27);
}
errors++;
}
}
if(data.priority !== undefined){
let data33 = data.priority;
if(!((((data33 === "routine") || (data33 === "urgent")) || (data33 === "asap")) || (data33 === "stat"))){
const err28 = {instancePath:instancePath+"/priority",schemaPath:"#/properties/priority/enum",keyword:"enum",params:{allowedValues: schema80.properties.priority.enum}};
if(vErrors === null){
vErrors = [err28];
}
else {
vErrors.push(err28);
}
errors++;
}
}
if(data._priority !== undefined){
if(!(validate32(data._priority, {instancePath:instancePath+"/_priority",parentData:data,parentDataProperty:"_priority",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.doNotPerform !== undefined){
if(!(validate118(data.doNotPerform, {instancePath:instancePath+"/doNotPerform",parentData:data,parentDataProperty:"doNotPerform",rootData}))){
vErrors = vErrors === null ? validate118.errors : vErrors.concat(validate118.errors);
errors = vErrors.length;
}
}
if(data._doNotPerform !== undefined){
if(!(validate32(data._doNotPerform, {instancePath:instancePath+"/_doNotPerform",parentData:data,parentDataProperty:"_doNotPerform",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.code !== undefined){
if(!(validate106(data.code, {instancePath:instancePath+"/code",parentData:data,parentDataProperty:"code",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.orderDetail !== undefined){
let data38 = data.orderDetail;
if(Array.isArray(data38)){
if(data38.length < 1){
const err29 = {instancePath:instancePath+"/orderDetail",schemaPath:"#/properties/orderDetail/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err29];
}
else {
vErrors.push(err29);
}
errors++;
}
const len10 = data38.length;
for(let i10=0; i10<len10; i10++){
if(!(validate106(data38[i10], {instancePath:instancePath+"/orderDetail/" + i10,parentData:data38,parentDataProperty:i10,rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
}
else {
const err30 = {instancePath:instancePath+"/orderDetail",schemaPath:"#/properties/orderDetail/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err30];
}
else {
vErrors.push(err30);
}
errors++;
}
}
if(data.quantityQuantity !== undefined){
if(!(validate236(data.quantityQuantity, {instancePath:instancePath+"/quantityQuantity",parentData:data,parentDataProperty:"quantityQuantity",rootData}))){
vErrors = vErrors === null ? validate236.errors : vErrors.concat(validate236.errors);
errors = vErrors.length;
}
}
if(data.quantityRatio !== undefined){
if(!(validate253(data.quantityRatio, {instancePath:instancePath+"/quantityRatio",parentData:data,parentDataProperty:"quantityRatio",rootData}))){
vErrors = vErrors === null ? validate253.errors : vErrors.concat(validate253.errors);
errors = vErrors.length;
}
}
if(data.quantityRange !== undefined){
if(!(validate248(data.quantityRange, {instancePath:instancePath+"/quantityRange",parentData:data,parentDataProperty:"quantityRange",rootData}))){
vErrors = vErrors === null ? validate248.errors : vErrors.concat(validate248.errors);
errors = vErrors.length;
}
}
if(data.subject !== undefined){
if(!(validate97(data.subject, {instancePath:instancePath+"/subject",parentData:data,parentDataProperty:"subject",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
if(data.encounter !== undefined){
if(!(validate97(data.encounter, {instancePath:instancePath+"/encounter",parentData:data,parentDataProperty:"encounter",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
if(data.occurrenceDateTime !== undefined){
let data45 = data.occurrenceDateTime;
if(typeof data45 === "string"){
if(!pattern7.test(data45)){
const err31 = {instancePath:instancePath+"/occurrenceDateTime",schemaPath:"#/properties/occurrenceDateTime/pattern",keyword:"pattern",params:{pattern: "^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1])(T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00)))?)?)?$"}};
if(vErrors === null){
vErrors = [err31];
}
else {
vErrors.push(err31);
}
errors++;
}
}
else {
const err32 = {instancePath:instancePath+"/occurrenceDateTime",schemaPath:"#/properties/occurrenceDateTime/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err32];
}
else {
vErrors.push(err32);
}
errors++;
}
}
if(data._occurrenceDateTime !== undefined){
if(!(validate32(data._occurrenceDateTime, {instancePath:instancePath+"/_occurrenceDateTime",parentData:data,parentDataProperty:"_occurrenceDateTime",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.occurrencePeriod !== undefined){
if(!(validate72(data.occurrencePeriod, {instancePath:instancePath+"/occurrencePeriod",parentData:data,parentDataProperty:"occurrencePeriod",rootData}))){
vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
errors = vErrors.length;
}
}
if(data.occurrenceTiming !== undefined){
if(!(validate290(data.occurrenceTiming, {instancePath:instancePath+"/occurrenceTiming",parentData:data,parentDataProperty:"occurrenceTiming",rootData}))){
vErrors = vErrors === null ? validate290.errors : vErrors.concat(validate290.errors);
errors = vErrors.length;
}
}
if(data.asNeededBoolean !== undefined){
if(typeof data.asNeededBoolean !== "boolean"){
const err33 = {instancePath:instancePath+"/asNeededBoolean",schemaPath:"#/properties/asNeededBoolean/type",keyword:"type",params:{type: "boolean"}};
if(vErrors === null){
vErrors = [err33];
}
else {
vErrors.push(err33);
}
errors++;
}
}
if(data._asNeededBoolean !== undefined){
if(!(validate32(data._asNeededBoolean, {instancePath:instancePath+"/_asNeededBoolean",parentData:data,parentDataProperty:"_asNeededBoolean",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.asNeededCodeableConcept !== undefined){
if(!(validate106(data.asNeededCodeableConcept, {instancePath:instancePath+"/asNeededCodeableConcept",parentData:data,parentDataProperty:"asNeededCodeableConcept",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.authoredOn !== undefined){
if(!(validate74(data.authoredOn, {instancePath:instancePath+"/authoredOn",parentData:data,parentDataProperty:"authoredOn",rootData}))){
vErrors = vErrors === null ? validate74.errors : vErrors.concat(validate74.errors);
errors = vErrors.length;
}
}
if(data._authoredOn !== undefined){
if(!(validate32(data._authoredOn, {instancePath:instancePath+"/_authoredOn",parentData:data,parentDataProperty:"_authoredOn",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.requester !== undefined){
if(!(validate97(data.requester, {instancePath:instancePath+"/requester",parentData:data,parentDataProperty:"requester",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
if(data.performerType !== undefined){
if(!(validate106(data.performerType, {instancePath:instancePath+"/performerType",parentData:data,parentDataProperty:"performerType",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.performer !== undefined){
let data56 = data.performer;
if(Array.isArray(data56)){
if(data56.length < 1){
const err34 = {instancePath:instancePath+"/performer",schemaPath:"#/properties/performer/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err34];
}
else {
vErrors.push(err34);
}
errors++;
}
const len11 = data56.length;
for(let i11=0; i11<len11; i11++){
if(!(validate97(data56[i11], {instancePath:instancePath+"/performer/" + i11,parentData:data56,parentDataProperty:i11,rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
}
else {
const err35 = {instancePath:instancePath+"/performer",schemaPath:"#/properties/performer/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err35];
}
else {
vErrors.push(err35);
}
errors++;
}
}
if(data.locationCode !== undefined){
let data58 = data.locationCode;
if(Array.isArray(data58)){
if(data58.length < 1){
const err36 = {instancePath:instancePath+"/locationCode",schemaPath:"#/properties/locationCode/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err36];
}
else {
vErrors.push(err36);
}
errors++;
}
const len12 = data58.length;
for(let i12=0; i12<len12; i12++){
if(!(validate106(data58[i12], {instancePath:instancePath+"/locationCode/" + i12,parentData:data58,parentDataProperty:i12,rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
}
else {
const err37 = {instancePath:instancePath+"/locationCode",schemaPath:"#/properties/locationCode/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err37];
}
else {
vErrors.push(err37);
}
errors++;
}
}
if(data.locationReference !== undefined){
let data60 = data.locationReference;
if(Array.isArray(data60)){
if(data60.length < 1){
const err38 = {instancePath:instancePath+"/locationReference",schemaPath:"#/properties/locationReference/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err38];
}
else {
vErrors.push(err38);
}
errors++;
}
const len13 = data60.length;
for(let i13=0; i13<len13; i13++){
if(!(validate97(data60[i13], {instancePath:instancePath+"/locationReference/" + i13,parentData:data60,parentDataProperty:i13,rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
}
else {
const err39 = {instancePath:instancePath+"/locationReference",schemaPath:"#/properties/locationReference/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err39];
}
else {
vErrors.push(err39);
}
errors++;
}
}
if(data.reasonCode !== undefined){
let data62 = data.reasonCode;
if(Array.isArray(data62)){
if(data62.length < 1){
const err40 = {instancePath:instancePath+"/reasonCode",schemaPath:"#/properties/reasonCode/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err40];
}
else {
vErrors.push(err40);
}
errors++;
}
const len14 = data62.length;
for(let i14=0; i14<len14; i14++){
if(!(validate106(data62[i14], {instancePath:instancePath+"/reasonCode/" + i14,parentData:data62,parentDataProperty:i14,rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
}
else {
const err41 = {instancePath:instancePath+"/reasonCode",schemaPath:"#/properties/reasonCode/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err41];
}
else {
vErrors.push(err41);
}
errors++;
}
}
if(data.reasonReference !== undefined){
let data64 = data.reasonReference;
if(Array.isArray(data64)){
if(data64.length < 1){
const err42 = {instancePath:instancePath+"/reasonReference",schemaPath:"#/properties/reasonReference/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err42];
}
else {
vErrors.push(err42);
}
errors++;
}
const len15 = data64.length;
for(let i15=0; i15<len15; i15++){
if(!(validate97(data64[i15], {instancePath:instancePath+"/reasonReference/" + i15,parentData:data64,parentDataProperty:i15,rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
}
else {
const err43 = {instancePath:instancePath+"/reasonReference",schemaPath:"#/properties/reasonReference/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err43];
}
else {
vErrors.push(err43);
}
errors++;
}
}
if(data.insurance !== undefined){
let data66 = data.insurance;
if(Array.isArray(data66)){
if(data66.length < 1){
const err44 = {instancePath:instancePath+"/insurance",schemaPath:"#/properties/insurance/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err44];
}
else {
vErrors.push(err44);
}
errors++;
}
const len16 = data66.length;
for(let i16=0; i16<len16; i16++){
if(!(validate97(data66[i16], {instancePath:instancePath+"/insurance/" + i16,parentData:data66,parentDataProperty:i16,rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
}
else {
const err45 = {instancePath:instancePath+"/insurance",schemaPath:"#/properties/insurance/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err45];
}
else {
vErrors.push(err45);
}
errors++;
}
}
if(data.supportingInfo !== undefined){
let data68 = data.supportingInfo;
if(Array.isArray(data68)){
if(data68.length < 1){
const err46 = {instancePath:instancePath+"/supportingInfo",schemaPath:"#/properties/supportingInfo/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err46];
}
else {
vErrors.push(err46);
}
errors++;
}
const len17 = data68.length;
for(let i17=0; i17<len17; i17++){
if(!(validate97(data68[i17], {instancePath:instancePath+"/supportingInfo/" + i17,parentData:data68,parentDataProperty:i17,rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
}
else {
const err47 = {instancePath:instancePath+"/supportingInfo",schemaPath:"#/properties/supportingInfo/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err47];
}
else {
vErrors.push(err47);
}
errors++;
}
}
if(data.specimen !== undefined){
let data70 = data.specimen;
if(Array.isArray(data70)){
if(data70.length < 1){
const err48 = {instancePath:instancePath+"/specimen",schemaPath:"#/properties/specimen/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err48];
}
else {
vErrors.push(err48);
}
errors++;
}
const len18 = data70.length;
for(let i18=0; i18<len18; i18++){
if(!(validate97(data70[i18], {instancePath:instancePath+"/specimen/" + i18,parentData:data70,parentDataProperty:i18,rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
}
else {
const err49 = {instancePath:instancePath+"/specimen",schemaPath:"#/properties/specimen/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err49];
}
else {
vErrors.push(err49);
}
errors++;
}
}
if(data.bodySite !== undefined){
let data72 = data.bodySite;
if(Array.isArray(data72)){
if(data72.length < 1){
const err50 = {instancePath:instancePath+"/bodySite",schemaPath:"#/properties/bodySite/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err50];
}
else {
vErrors.push(err50);
}
errors++;
}
const len19 = data72.length;
for(let i19=0; i19<len19; i19++){
if(!(validate106(data72[i19], {instancePath:instancePath+"/bodySite/" + i19,parentData:data72,parentDataProperty:i19,rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
}
else {
const err51 = {instancePath:instancePath+"/bodySite",schemaPath:"#/properties/bodySite/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err51];
}
else {
vErrors.push(err51);
}
errors++;
}
}
if(data.note !== undefined){
let data74 = data.note;
if(Array.isArray(data74)){
if(data74.length < 1){
const err52 = {instancePath:instancePath+"/note",schemaPath:"#/properties/note/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err52];
}
else {
vErrors.push(err52);
}
errors++;
}
const len20 = data74.length;
for(let i20=0; i20<len20; i20++){
if(!(validate95(data74[i20], {instancePath:instancePath+"/note/" + i20,parentData:data74,parentDataProperty:i20,rootData}))){
vErrors = vErrors === null ? validate95.errors : vErrors.concat(validate95.errors);
errors = vErrors.length;
}
}
}
else {
const err53 = {instancePath:instancePath+"/note",schemaPath:"#/properties/note/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err53];
}
else {
vErrors.push(err53);
}
errors++;
}
}
if(data.patientInstruction !== undefined){
if(!(validate26(data.patientInstruction, {instancePath:instancePath+"/patientInstruction",parentData:data,parentDataProperty:"patientInstruction",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._patientInstruction !== undefined){
if(!(validate32(data._patientInstruction, {instancePath:instancePath+"/_patientInstruction",parentData:data,parentDataProperty:"_patientInstruction",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.relevantHistory !== undefined){
let data78 = data.relevantHistory;
if(Array.isArray(data78)){
if(data78.length < 1){
const err54 = {instancePath:instancePath+"/relevantHistory",schemaPath:"#/properties/relevantHistory/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err54];
}
else {
vErrors.push(err54);
}
errors++;
}
const len21 = data78.length;
for(let i21=0; i21<len21; i21++){
if(!(validate97(data78[i21], {instancePath:instancePath+"/relevantHistory/" + i21,parentData:data78,parentDataProperty:i21,rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
}
else {
const err55 = {instancePath:instancePath+"/relevantHistory",schemaPath:"#/properties/relevantHistory/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err55];
}
else {
vErrors.push(err55);
}
errors++;
}
}
let count0 = 0;
if(data["quantityQuantity"] !== undefined){
count0++;
}
if(data["quantityRatio"] !== undefined){
count0++;
}
if(data["quantityRange"] !== undefined){
count0++;
}
if(count0 > 1){
const err56 = {instancePath,schemaPath:"#/choices",keyword:"choices",params:{}};
if(vErrors === null){
vErrors = [err56];
}
else {
vErrors.push(err56);
}
errors++;
}
let count1 = 0;
if(data["occurrenceDateTime"] !== undefined){
count1++;
}
if(data["occurrencePeriod"] !== undefined){
count1++;
}
if(data["occurrenceTiming"] !== undefined){
count1++;
}
if(count1 > 1){
const err57 = {instancePath,schemaPath:"#/choices",keyword:"choices",params:{}};
if(vErrors === null){
vErrors = [err57];
}
else {
vErrors.push(err57);
}
errors++;
}
let count2 = 0;
if(data["asNeededBoolean"] !== undefined){
count2++;
}
if(data["asNeededCodeableConcept"] !== undefined){
count2++;
}
if(count2 > 1){
const err58 = {instancePath,schemaPath:"#/choices",keyword:"choices",params:{}};
if(vErrors === null){
vErrors = [err58];
}
else {
vErrors.push(err58);
}
errors++;
}
}
else {
const err59 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err59];
}
else {
vErrors.push(err59);
}
errors++;
}
validate752.errors = vErrors;
return errors === 0;
}

const schema81 = {"type":"object","properties":{"resourceType":{"const":"DiagnosticReport"},"id":{"$ref":"#/definitions/id"},"meta":{"$ref":"#/definitions/Meta"},"implicitRules":{"$ref":"#/definitions/uri"},"_implicitRules":{"$ref":"#/definitions/Element"},"language":{"$ref":"#/definitions/code"},"_language":{"$ref":"#/definitions/Element"},"text":{"$ref":"#/definitions/Narrative"},"contained":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/ResourceList"}},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"identifier":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Identifier"}},"basedOn":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"status":{"enum":["registered","partial","preliminary","final","amended","corrected","appended","cancelled","entered-in-error","unknown"]},"_status":{"$ref":"#/definitions/Element"},"category":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"code":{"$ref":"#/definitions/CodeableConcept"},"subject":{"$ref":"#/definitions/Reference"},"encounter":{"$ref":"#/definitions/Reference"},"effectiveDateTime":{"type":"string","pattern":"^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1])(T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00)))?)?)?$"},"_effectiveDateTime":{"$ref":"#/definitions/Element"},"effectivePeriod":{"$ref":"#/definitions/Period"},"issued":{"$ref":"#/definitions/instant"},"_issued":{"$ref":"#/definitions/Element"},"performer":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"resultsInterpreter":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"specimen":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"result":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"imagingStudy":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"media":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/DiagnosticReport_Media"}},"conclusion":{"$ref":"#/definitions/string"},"_conclusion":{"$ref":"#/definitions/Element"},"conclusionCode":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"presentedForm":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Attachment"}}},"required":["code","resourceType","status"],"choices":[{"element":"effective[x]","properties":["effectiveDateTime","effectivePeriod"],"required":false}],"additionalProperties":false};
const schema82 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"comment":{"$ref":"#/definitions/string"},"_comment":{"$ref":"#/definitions/Element"},"link":{"$ref":"#/definitions/Reference"}},"required":["link"],"additionalProperties":false};

function validate830(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.link === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "link"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
for(const key0 in data){
if(!((((((key0 === "id") || (key0 === "extension")) || (key0 === "modifierExtension")) || (key0 === "comment")) || (key0 === "_comment")) || (key0 === "link"))){
const err1 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err2 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(validate28(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err3 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.modifierExtension !== undefined){
let data3 = data.modifierExtension;
if(Array.isArray(data3)){
if(data3.length < 1){
const err4 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
const len1 = data3.length;
for(let i1=0; i1<len1; i1++){
if(!(validate28(data3[i1], {instancePath:instancePath+"/modifierExtension/" + i1,parentData:data3,parentDataProperty:i1,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err5 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
if(data.comment !== undefined){
if(!(validate26(data.comment, {instancePath:instancePath+"/comment",parentData:data,parentDataProperty:"comment",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._comment !== undefined){
if(!(validate32(data._comment, {instancePath:instancePath+"/_comment",parentData:data,parentDataProperty:"_comment",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.link !== undefined){
if(!(validate97(data.link, {instancePath:instancePath+"/link",parentData:data,parentDataProperty:"link",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
}
else {
const err6 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
validate830.errors = vErrors;
return errors === 0;
}


function validate804(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.code === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "code"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.resourceType === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "resourceType"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(data.status === undefined){
const err2 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "status"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
for(const key0 in data){
if(!(func2.call(schema81.properties, key0))){
const err3 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.resourceType !== undefined){
if("DiagnosticReport" !== data.resourceType){
const err4 = {instancePath:instancePath+"/resourceType",schemaPath:"#/properties/resourceType/const",keyword:"const",params:{allowedValue: "DiagnosticReport"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate23(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate23.errors : vErrors.concat(validate23.errors);
errors = vErrors.length;
}
}
if(data.meta !== undefined){
if(!(validate25(data.meta, {instancePath:instancePath+"/meta",parentData:data,parentDataProperty:"meta",rootData}))){
vErrors = vErrors === null ? validate25.errors : vErrors.concat(validate25.errors);
errors = vErrors.length;
}
}
if(data.implicitRules !== undefined){
if(!(validate30(data.implicitRules, {instancePath:instancePath+"/implicitRules",parentData:data,parentDataProperty:"implicitRules",rootData}))){
vErrors = vErrors === null ? validate30.errors : vErrors.concat(validate30.errors);
errors = vErrors.length;
}
}
if(data._implicitRules !== undefined){
if(!(validate32(data._implicitRules, {instancePath:instancePath+"/_implicitRules",parentData:data,parentDataProperty:"_implicitRules",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.language !== undefined){
if(!(validate91(data.language, {instancePath:instancePath+"/language",parentData:data,parentDataProperty:"language",rootData}))){
vErrors = vErrors === null ? validate91.errors : vErrors.concat(validate91.errors);
errors = vErrors.length;
}
}
if(data._language !== undefined){
if(!(validate32(data._language, {instancePath:instancePath+"/_language",parentData:data,parentDataProperty:"_language",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.text !== undefined){
if(!(validate511(data.text, {instancePath:instancePath+"/text",parentData:data,parentDataProperty:"text",rootData}))){
vErrors = vErrors === null ? validate511.errors : vErrors.concat(validate511.errors);
errors = vErrors.length;
}
}
if(data.contained !== undefined){
let data8 = data.contained;
if(Array.isArray(data8)){
if(data8.length < 1){
const err5 = {instancePath:instancePath+"/contained",schemaPath:"#/properties/contained/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
const len0 = data8.length;
for(let i0=0; i0<len0; i0++){
if(!(wrapper40.validate(data8[i0], {instancePath:instancePath+"/contained/" + i0,parentData:data8,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? wrapper40.validate.errors : vErrors.concat(wrapper40.validate.errors);
errors = vErrors.length;
}
}
}
else {
const err6 = {instancePath:instancePath+"/contained",schemaPath:"#/properties/contained/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
if(data.extension !== undefined){
let data10 = data.extension;
if(Array.isArray(data10)){
if(data10.length < 1){
const err7 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
const len1 = data10.length;
for(let i1=0; i1<len1; i1++){
if(!(validate28(data10[i1], {instancePath:instancePath+"/extension/" + i1,parentData:data10,parentDataProperty:i1,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err8 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
}
if(data.modifierExtension !== undefined){
let data12 = data.modifierExtension;
if(Array.isArray(data12)){
if(data12.length < 1){
const err9 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
const len2 = data12.length;
for(let i2=0; i2<len2; i2++){
if(!(validate28(data12[i2], {instancePath:instancePath+"/modifierExtension/" + i2,parentData:data12,parentDataProperty:i2,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err10 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err10];
}
else {
vErrors.push(err10);
}
errors++;
}
}
if(data.identifier !== undefined){
let data14 = data.identifier;
if(Array.isArray(data14)){
if(data14.length < 1){
const err11 = {instancePath:instancePath+"/identifier",schemaPath:"#/properties/identifier/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err11];
}
else {
vErrors.push(err11);
}
errors++;
}
const len3 = data14.length;
for(let i3=0; i3<len3; i3++){
if(!(validate103(data14[i3], {instancePath:instancePath+"/identifier/" + i3,parentData:data14,parentDataProperty:i3,rootData}))){
vErrors = vErrors === null ? validate103.errors : vErrors.concat(validate103.errors);
errors = vErrors.length;
}
}
}
else {
const err12 = {instancePath:instancePath+"/identifier",schemaPath:"#/properties/identifier/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err12];
}
else {
vErrors.push(err12);
}
errors++;
}
}
if(data.basedOn !== undefined){
let data16 = data.basedOn;
if(Array.isArray(data16)){
if(data16.length < 1){
const err13 = {instancePath:instancePath+"/basedOn",schemaPath:"#/properties/basedOn/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err13];
}
else {
vErrors.push(err13);
}
errors++;
}
const len4 = data16.length;
for(let i4=0; i4<len4; i4++){
if(!(validate97(data16[i4], {instancePath:instancePath+"/basedOn/" + i4,parentData:data16,parentDataProperty:i4,rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
}
else {
const err14 = {instancePath:instancePath+"/basedOn",schemaPath:"#/properties/basedOn/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err14];
}
else {
vErrors.push(err14);
}
errors++;
}
}
if(data.status !== undefined){
let data18 = data.status;
if(!((((((((((data18 === "registered") || (data18 === "partial")) || (data18 === "preliminary")) || (data18 === "final")) || (data18 === "amended")) || (data18 === "corrected")) || (data18 === "appended")) || (data18 === "cancelled")) || (data18 === "entered-in-error")) || (data18 === "unknown"))){
const err15 = {instancePath:instancePath+"/status",schemaPath:"#/properties/status/enum",keyword:"enum",params:{allowedValues: schema81.properties.status.enum}};
if(vErrors === null){
vErrors = [err15];
}
else {
vErrors.push(err15);
}
errors++;
}
}
if(data._status !== undefined){
if(!(validate32(data._status, {instancePath:instancePath+"/_status",parentData:data,parentDataProperty:"_status",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.category !== undefined){
let data20 = data.category;
if(Array.isArray(data20)){
if(data20.length < 1){
const err16 = {instancePath:instancePath+"/category",schemaPath:"#/properties/category/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err16];
}
else {
vErrors.push(err16);
}
errors++;
}
const len5 = data20.length;
for(let i5=0; i5<len5; i5++){
if(!(validate106(data20[i5], {instancePath:instancePath+"/category/" + i5,parentData:data20,parentDataProperty:i5,rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
}
else {
const err17 = {instancePath:instancePath+"/category",schemaPath:"#/properties/category/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err17];
}
else {
vErrors.push(err17);
}
errors++;
}
}
if(data.code !== undefined){
if(!(validate106(data.code, {instancePath:instancePath+"/code",parentData:data,parentDataProperty:"code",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.subject !== undefined){
if(!(validate97(data.subject, {instancePath:instancePath+"/subject",parentData:data,parentDataProperty:"subject",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
if(data.encounter !== undefined){
if(!(validate97(data.encounter, {instancePath:instancePath+"/encounter",parentData:data,parentDataProperty:"encounter",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
if(data.effectiveDateTime !== undefined){
let data25 = data.effectiveDateTime;
if(typeof data25 === "string"){
if(!pattern7.test(data25)){
const err18 = {instancePath:instancePath+"/effectiveDateTime",schemaPath:"#/properties/effectiveDateTime/pattern",keyword:"pattern",params:{pattern: "^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1])(T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00)))?)?)?$"}};
if(vErrors === null){
vErrors = [err18];
}
else {
vErrors.push(err18);
}
errors++;
}
}
else {
const err19 = {instancePath:instancePath+"/effectiveDateTime",schemaPath:"#/properties/effectiveDateTime/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err19];
}
else {
vErrors.push(err19);
}
errors++;
}
}
if(data._effectiveDateTime !== undefined){
if(!(validate32(data._effectiveDateTime, {instancePath:instancePath+"/_effectiveDateTime",parentData:data,parentDataProperty:"_effectiveDateTime",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.effectivePeriod !== undefined){
if(!(validate72(data.effectivePeriod, {instancePath:instancePath+"/effectivePeriod",parentData:data,parentDataProperty:"effectivePeriod",rootData}))){
vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
errors = vErrors.length;
}
}
if(data.issued !== undefined){
if(!(validate278(data.issued, {instancePath:instancePath+"/issued",parentData:data,parentDataProperty:"issued",rootData}))){
vErrors = vErrors === null ? validate278.errors : vErrors.concat(validate278.errors);
errors = vErrors.length;
}
}
if(data._issued !== undefined){
if(!(validate32(data._issued, {instancePath:instancePath+"/_issued",parentData:data,parentDataProperty:"_issued",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.performer !== undefined){
let data30 = data.performer;
if(Array.isArray(data30)){
if(data30.length < 1){
const err20 = {instancePath:instancePath+"/performer",schemaPath:"#/properties/performer/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err20];
}
else {
vErrors.push(err20);
}
errors++;
}
const len6 = data30.length;
for(let i6=0; i6<len6; i6++){
if(!(validate97(data30[i6], {instancePath:instancePath+"/performer/" + i6,parentData:data30,parentDataProperty:i6,rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
}
else {
const err21 = {instancePath:instancePath+"/performer",schemaPath:"#/properties/performer/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err21];
}
else {
vErrors.push(err21);
}
errors++;
}
}
if(data.resultsInterpreter !== undefined){
let data32 = data.resultsInterpreter;
if(Array.isArray(data32)){
if(data32.length < 1){
const err22 = {instancePath:instancePath+"/resultsInterpreter",schemaPath:"#/properties/resultsInterpreter/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err22];
}
else {
vErrors.push(err22);
}
errors++;
}
const len7 = data32.length;
for(let i7=0; i7<len7; i7++){
if(!(validate97(data32[i7], {instancePath:instancePath+"/resultsInterpreter/" + i7,parentData:data32,parentDataProperty:i7,rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
}
else {
const err23 = {instancePath:instancePath+"/resultsInterpreter",schemaPath:"#/properties/resultsInterpreter/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err23];
}
else {
vErrors.push(err23);
}
errors++;
}
}
if(data.specimen !== undefined){
let data34 = data.specimen;
if(Array.isArray(data34)){
if(data34.length < 1){
const err24 = {instancePath:instancePath+"/specimen",schemaPath:"#/properties/specimen/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err24];
}
else {
vErrors.push(err24);
}
errors++;
}
const len8 = data34.length;
for(let i8=0; i8<len8; i8++){
if(!(validate97(data34[i8], {instancePath:instancePath+"/specimen/" + i8,parentData:data34,parentDataProperty:i8,rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
}
else {
const err25 = {instancePath:instancePath+"/specimen",schemaPath:"#/properties/specimen/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err25];
}
else {
vErrors.push(err25);
}
errors++;
}
}
if(data.result !== undefined){
let data36 = data.result;
if(Array.isArray(data36)){
if(data36.length < 1){
const err26 = {instancePath:instancePath+"/result",schemaPath:"#/properties/result/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err26];
}
else {
vErrors.push(err26);
}
errors++;
}
const len9 = data36.length;
for(let i9=0; i9<len9; i9++){
if(!(validate97(data36[i9], {instancePath:instancePath+"/result/" + i9,parentData:data36,parentDataProperty:i9,rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
}
else {
const err27 = {instancePath:instancePath+"/result",schemaPath:"#/properties/result/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err27];
}
else {
vErrors.push(err27);
}
errors++;
}
}
if(data.imagingStudy !== undefined){
let data38 = data.imagingStudy;
if(Array.isArray(data38)){
if(data38.length < 1){
const err28 = {instancePath:instancePath+"/imagingStudy",schemaPath:"#/properties/imagingStudy/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err28];
}
else {
vErrors.push(err28);
}
errors++;
}
const len10 = data38.length;
for(let i10=0; i10<len10; i10++){
if(!(validate97(data38[i10], {instancePath:instancePath+"/imagingStudy/" + i10,parentData:data38,parentDataProperty:i10,rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
}
else {
const err29 = {instancePath:instancePath+"/imagingStudy",schemaPath:"#/properties/imagingStudy/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err29];
}
else {
vErrors.push(err29);
}
errors++;
}
}
if(data.media !== undefined){
let data40 = data.media;
if(Array.isArray(data40)){
if(data40.length < 1){
const err30 = {instancePath:instancePath+"/media",schemaPath:"#/properties/media/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err30];
}
else {
vErrors.push(err30);
}
errors++;
}
const len11 = data40.length;
for(let i11=0; i11<len11; i11++){
if(!(validate830(data40[i11], {instancePath:instancePath+"/media/" + i11,parentData:data40,parentDataProperty:i11,rootData}))){
vErrors = vErrors === null ? validate830.errors : vErrors.concat(validate830.errors);
errors = vErrors.length;
}
}
}
else {
const err31 = {instancePath:instancePath+"/media",schemaPath:"#/properties/media/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err31];
}
else {
vErrors.push(err31);
}
errors++;
}
}
if(data.conclusion !== undefined){
if(!(validate26(data.conclusion, {instancePath:instancePath+"/conclusion",parentData:data,parentDataProperty:"conclusion",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._conclusion !== undefined){
if(!(validate32(data._conclusion, {instancePath:instancePath+"/_conclusion",parentData:data,parentDataProperty:"_conclusion",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.conclusionCode !== undefined){
let data44 = data.conclusionCode;
if(Array.isArray(data44)){
if(data44.length < 1){
const err32 = {instancePath:instancePath+"/conclusionCode",schemaPath:"#/properties/conclusionCode/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err32];
}
else {
vErrors.push(err32);
}
errors++;
}
const len12 = data44.length;
for(let i12=0; i12<len12; i12++){
if(!(validate106(data44[i12], {instancePath:instancePath+"/conclusionCode/" + i12,parentData:data44,parentDataProperty:i12,rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
}
else {
const err33 = {instancePath:instancePath+"/conclusionCode",schemaPath:"#/properties/conclusionCode/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err33];
}
else {
vErrors.push(err33);
}
errors++;
}
}
if(data.presentedForm !== undefined){
let data46 = data.presentedForm;
if(Array.isArray(data46)){
if(data46.length < 1){
const err34 = {instancePath:instancePath+"/presentedForm",schemaPath:"#/properties/presentedForm/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err34];
}
else {
vErrors.push(err34);
}
errors++;
}
const len13 = data46.length;
for(let i13=0; i13<len13; i13++){
if(!(validate141(data46[i13], {instancePath:instancePath+"/presentedForm/" + i13,parentData:data46,parentDataProperty:i13,rootData}))){
vErrors = vErrors === null ? validate141.errors : vErrors.concat(validate141.errors);
errors = vErrors.length;
}
}
}
else {
const err35 = {instancePath:instancePath+"/presentedForm",schemaPath:"#/properties/presentedForm/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err35];
}
else {
vErrors.push(err35);
}
errors++;
}
}
let count0 = 0;
if(data["effectiveDateTime"] !== undefined){
count0++;
}
if(data["effectivePeriod"] !== undefined){
count0++;
}
if(count0 > 1){
const err36 = {instancePath,schemaPath:"#/choices",keyword:"choices",params:{}};
if(vErrors === null){
vErrors = [err36];
}
else {
vErrors.push(err36);
}
errors++;
}
}
else {
const err37 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err37];
}
else {
vErrors.push(err37);
}
errors++;
}
validate804.errors = vErrors;
return errors === 0;
}

const schema83 = {"type":"object","properties":{"resourceType":{"const":"Device"},"id":{"$ref":"#/definitions/id"},"meta":{"$ref":"#/definitions/Meta"},"implicitRules":{"$ref":"#/definitions/uri"},"_implicitRules":{"$ref":"#/definitions/Element"},"language":{"$ref":"#/definitions/code"},"_language":{"$ref":"#/definitions/Element"},"text":{"$ref":"#/definitions/Narrative"},"contained":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/ResourceList"}},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"identifier":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Identifier"}},"definition":{"$ref":"#/definitions/Reference"},"udiCarrier":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Device_UdiCarrier"}},"status":{"enum":["active","inactive","entered-in-error","unknown"]},"_status":{"$ref":"#/definitions/Element"},"statusReason":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"distinctIdentifier":{"$ref":"#/definitions/string"},"_distinctIdentifier":{"$ref":"#/definitions/Element"},"manufacturer":{"$ref":"#/definitions/string"},"_manufacturer":{"$ref":"#/definitions/Element"},"manufactureDate":{"$ref":"#/definitions/dateTime"},"_manufactureDate":{"$ref":"#/definitions/Element"},"expirationDate":{"$ref":"#/definitions/dateTime"},"_expirationDate":{"$ref":"#/definitions/Element"},"lotNumber":{"$ref":"#/definitions/string"},"_lotNumber":{"$ref":"#/definitions/Element"},"serialNumber":{"$ref":"#/definitions/string"},"_serialNumber":{"$ref":"#/definitions/Element"},"deviceName":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Device_DeviceName"}},"modelNumber":{"$ref":"#/definitions/string"},"_modelNumber":{"$ref":"#/definitions/Element"},"partNumber":{"$ref":"#/definitions/string"},"_partNumber":{"$ref":"#/definitions/Element"},"type":{"$ref":"#/definitions/CodeableConcept"},"specialization":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Device_Specialization"}},"version":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Device_Version"}},"property":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Device_Property"}},"patient":{"$ref":"#/definitions/Reference"},"owner":{"$ref":"#/definitions/Reference"},"contact":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/ContactPoint"}},"location":{"$ref":"#/definitions/Reference"},"url":{"$ref":"#/definitions/uri"},"_url":{"$ref":"#/definitions/Element"},"note":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Annotation"}},"safety":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"parent":{"$ref":"#/definitions/Reference"}},"required":["resourceType"],"additionalProperties":false};
const schema84 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"deviceIdentifier":{"$ref":"#/definitions/string"},"_deviceIdentifier":{"$ref":"#/definitions/Element"},"issuer":{"$ref":"#/definitions/uri"},"_issuer":{"$ref":"#/definitions/Element"},"jurisdiction":{"$ref":"#/definitions/uri"},"_jurisdiction":{"$ref":"#/definitions/Element"},"carrierAIDC":{"$ref":"#/definitions/base64Binary"},"_carrierAIDC":{"$ref":"#/definitions/Element"},"carrierHRF":{"$ref":"#/definitions/string"},"_carrierHRF":{"$ref":"#/definitions/Element"},"entryType":{"enum":["barcode","rfid","manual","card","self-reported","unknown"]},"_entryType":{"$ref":"#/definitions/Element"}},"additionalProperties":false};

function validate854(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
for(const key0 in data){
if(!(func2.call(schema84.properties, key0))){
const err0 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err1 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(validate28(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err2 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.modifierExtension !== undefined){
let data3 = data.modifierExtension;
if(Array.isArray(data3)){
if(data3.length < 1){
const err3 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
const len1 = data3.length;
for(let i1=0; i1<len1; i1++){
if(!(validate28(data3[i1], {instancePath:instancePath+"/modifierExtension/" + i1,parentData:data3,parentDataProperty:i1,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err4 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.deviceIdentifier !== undefined){
if(!(validate26(data.deviceIdentifier, {instancePath:instancePath+"/deviceIdentifier",parentData:data,parentDataProperty:"deviceIdentifier",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._deviceIdentifier !== undefined){
if(!(validate32(data._deviceIdentifier, {instancePath:instancePath+"/_deviceIdentifier",parentData:data,parentDataProperty:"_deviceIdentifier",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.issuer !== undefined){
if(!(validate30(data.issuer, {instancePath:instancePath+"/issuer",parentData:data,parentDataProperty:"issuer",rootData}))){
vErrors = vErrors === null ? validate30.errors : vErrors.concat(validate30.errors);
errors = vErrors.length;
}
}
if(data._issuer !== undefined){
if(!(validate32(data._issuer, {instancePath:instancePath+"/_issuer",parentData:data,parentDataProperty:"_issuer",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.jurisdiction !== undefined){
if(!(validate30(data.jurisdiction, {instancePath:instancePath+"/jurisdiction",parentData:data,parentDataProperty:"jurisdiction",rootData}))){
vErrors = vErrors === null ? validate30.errors : vErrors.concat(validate30.errors);
errors = vErrors.length;
}
}
if(data._jurisdiction !== undefined){
if(!(validate32(data._jurisdiction, {instancePath:instancePath+"/_jurisdiction",parentData:data,parentDataProperty:"_jurisdiction",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.carrierAIDC !== undefined){
if(!(validate147(data.carrierAIDC, {instancePath:instancePath+"/carrierAIDC",parentData:data,parentDataProperty:"carrierAIDC",rootData}))){
vErrors = vErrors === null ? validate147.errors : vErrors.concat(validate147.errors);
errors = vErrors.length;
}
}
if(data._carrierAIDC !== undefined){
if(!(validate32(data._carrierAIDC, {instancePath:instancePath+"/_carrierAIDC",parentData:data,parentDataProperty:"_carrierAIDC",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.carrierHRF !== undefined){
if(!(validate26(data.carrierHRF, {instancePath:instancePath+"/carrierHRF",parentData:data,parentDataProperty:"carrierHRF",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._carrierHRF !== undefined){
if(!(validate32(data._carrierHRF, {instancePath:instancePath+"/_carrierHRF",parentData:data,parentDataProperty:"_carrierHRF",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.entryType !== undefined){
let data15 = data.entryType;
if(!((((((data15 === "barcode") || (data15 === "rfid")) || (data15 === "manual")) || (data15 === "card")) || (data15 === "self-reported")) || (data15 === "unknown"))){
const err5 = {instancePath:instancePath+"/entryType",schemaPath:"#/properties/entryType/enum",keyword:"enum",params:{allowedValues: schema84.properties.entryType.enum}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
if(data._entryType !== undefined){
if(!(validate32(data._entryType, {instancePath:instancePath+"/_entryType",parentData:data,parentDataProperty:"_entryType",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
}
else {
const err6 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
validate854.errors = vErrors;
return errors === 0;
}

const schema85 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"name":{"$ref":"#/definitions/string"},"_name":{"$ref":"#/definitions/Element"},"type":{"enum":["udi-label-name","user-friendly-name","patient-reported-name","manufacturer-name","model-name","other"]},"_type":{"$ref":"#/definitions/Element"}},"required":["name","type"],"additionalProperties":false};

function validate884(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.name === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "name"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.type === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "type"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
for(const key0 in data){
if(!(((((((key0 === "id") || (key0 === "extension")) || (key0 === "modifierExtension")) || (key0 === "name")) || (key0 === "_name")) || (key0 === "type")) || (key0 === "_type"))){
const err2 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err3 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(validate28(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err4 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.modifierExtension !== undefined){
let data3 = data.modifierExtension;
if(Array.isArray(data3)){
if(data3.length < 1){
const err5 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
const len1 = data3.length;
for(let i1=0; i1<len1; i1++){
if(!(validate28(data3[i1], {instancePath:instancePath+"/modifierExtension/" + i1,parentData:data3,parentDataProperty:i1,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err6 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
if(data.name !== undefined){
if(!(validate26(data.name, {instancePath:instancePath+"/name",parentData:data,parentDataProperty:"name",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._name !== undefined){
if(!(validate32(data._name, {instancePath:instancePath+"/_name",parentData:data,parentDataProperty:"_name",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.type !== undefined){
let data7 = data.type;
if(!((((((data7 === "udi-label-name") || (data7 === "user-friendly-name")) || (data7 === "patient-reported-name")) || (data7 === "manufacturer-name")) || (data7 === "model-name")) || (data7 === "other"))){
const err7 = {instancePath:instancePath+"/type",schemaPath:"#/properties/type/enum",keyword:"enum",params:{allowedValues: schema85.properties.type.enum}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
}
if(data._type !== undefined){
if(!(validate32(data._type, {instancePath:instancePath+"/_type",parentData:data,parentDataProperty:"_type",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
}
else {
const err8 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
validate884.errors = vErrors;
return errors === 0;
}

const schema86 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"systemType":{"$ref":"#/definitions/CodeableConcept"},"version":{"$ref":"#/definitions/string"},"_version":{"$ref":"#/definitions/Element"}},"required":["systemType"],"additionalProperties":false};

function validate897(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.systemType === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "systemType"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
for(const key0 in data){
if(!((((((key0 === "id") || (key0 === "extension")) || (key0 === "modifierExtension")) || (key0 === "systemType")) || (key0 === "version")) || (key0 === "_version"))){
const err1 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err2 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(validate28(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err3 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.modifierExtension !== undefined){
let data3 = data.modifierExtension;
if(Array.isArray(data3)){
if(data3.length < 1){
const err4 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
const len1 = data3.length;
for(let i1=0; i1<len1; i1++){
if(!(validate28(data3[i1], {instancePath:instancePath+"/modifierExtension/" + i1,parentData:data3,parentDataProperty:i1,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err5 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
if(data.systemType !== undefined){
if(!(validate106(data.systemType, {instancePath:instancePath+"/systemType",parentData:data,parentDataProperty:"systemType",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.version !== undefined){
if(!(validate26(data.version, {instancePath:instancePath+"/version",parentData:data,parentDataProperty:"version",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._version !== undefined){
if(!(validate32(data._version, {instancePath:instancePath+"/_version",parentData:data,parentDataProperty:"_version",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
}
else {
const err6 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
validate897.errors = vErrors;
return errors === 0;
}

const schema87 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"type":{"$ref":"#/definitions/CodeableConcept"},"component":{"$ref":"#/definitions/Identifier"},"value":{"$ref":"#/definitions/string"},"_value":{"$ref":"#/definitions/Element"}},"required":["value"],"additionalProperties":false};

function validate905(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.value === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "value"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
for(const key0 in data){
if(!(((((((key0 === "id") || (key0 === "extension")) || (key0 === "modifierExtension")) || (key0 === "type")) || (key0 === "component")) || (key0 === "value")) || (key0 === "_value"))){
const err1 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err2 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(validate28(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err3 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.modifierExtension !== undefined){
let data3 = data.modifierExtension;
if(Array.isArray(data3)){
if(data3.length < 1){
const err4 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
const len1 = data3.length;
for(let i1=0; i1<len1; i1++){
if(!(validate28(data3[i1], {instancePath:instancePath+"/modifierExtension/" + i1,parentData:data3,parentDataProperty:i1,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err5 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
if(data.type !== undefined){
if(!(validate106(data.type, {instancePath:instancePath+"/type",parentData:data,parentDataProperty:"type",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.component !== undefined){
if(!(validate103(data.component, {instancePath:instancePath+"/component",parentData:data,parentDataProperty:"component",rootData}))){
vErrors = vErrors === null ? validate103.errors : vErrors.concat(validate103.errors);
errors = vErrors.length;
}
}
if(data.value !== undefined){
if(!(validate26(data.value, {instancePath:instancePath+"/value",parentData:data,parentDataProperty:"value",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._value !== undefined){
if(!(validate32(data._value, {instancePath:instancePath+"/_value",parentData:data,parentDataProperty:"_value",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
}
else {
const err6 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
validate905.errors = vErrors;
return errors === 0;
}

const schema88 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"type":{"$ref":"#/definitions/CodeableConcept"},"valueQuantity":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Quantity"}},"valueCode":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}}},"required":["type"],"additionalProperties":false};

function validate914(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.type === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "type"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
for(const key0 in data){
if(!((((((key0 === "id") || (key0 === "extension")) || (key0 === "modifierExtension")) || (key0 === "type")) || (key0 === "valueQuantity")) || (key0 === "valueCode"))){
const err1 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err2 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(validate28(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err3 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.modifierExtension !== undefined){
let data3 = data.modifierExtension;
if(Array.isArray(data3)){
if(data3.length < 1){
const err4 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
const len1 = data3.length;
for(let i1=0; i1<len1; i1++){
if(!(validate28(data3[i1], {instancePath:instancePath+"/modifierExtension/" + i1,parentData:data3,parentDataProperty:i1,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err5 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
if(data.type !== undefined){
if(!(validate106(data.type, {instancePath:instancePath+"/type",parentData:data,parentDataProperty:"type",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.valueQuantity !== undefined){
let data6 = data.valueQuantity;
if(Array.isArray(data6)){
if(data6.length < 1){
const err6 = {instancePath:instancePath+"/valueQuantity",schemaPath:"#/properties/valueQuantity/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
const len2 = data6.length;
for(let i2=0; i2<len2; i2++){
if(!(validate236(data6[i2], {instancePath:instancePath+"/valueQuantity/" + i2,parentData:data6,parentDataProperty:i2,rootData}))){
vErrors = vErrors === null ? validate236.errors : vErrors.concat(validate236.errors);
errors = vErrors.length;
}
}
}
else {
const err7 = {instancePath:instancePath+"/valueQuantity",schemaPath:"#/properties/valueQuantity/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
}
if(data.valueCode !== undefined){
let data8 = data.valueCode;
if(Array.isArray(data8)){
if(data8.length < 1){
const err8 = {instancePath:instancePath+"/valueCode",schemaPath:"#/properties/valueCode/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
const len3 = data8.length;
for(let i3=0; i3<len3; i3++){
if(!(validate106(data8[i3], {instancePath:instancePath+"/valueCode/" + i3,parentData:data8,parentDataProperty:i3,rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
}
else {
const err9 = {instancePath:instancePath+"/valueCode",schemaPath:"#/properties/valueCode/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
}
}
else {
const err10 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err10];
}
else {
vErrors.push(err10);
}
errors++;
}
validate914.errors = vErrors;
return errors === 0;
}


function validate842(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.resourceType === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "resourceType"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
for(const key0 in data){
if(!(func2.call(schema83.properties, key0))){
const err1 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
if(data.resourceType !== undefined){
if("Device" !== data.resourceType){
const err2 = {instancePath:instancePath+"/resourceType",schemaPath:"#/properties/resourceType/const",keyword:"const",params:{allowedValue: "Device"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate23(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate23.errors : vErrors.concat(validate23.errors);
errors = vErrors.length;
}
}
if(data.meta !== undefined){
if(!(validate25(data.meta, {instancePath:instancePath+"/meta",parentData:data,parentDataProperty:"meta",rootData}))){
vErrors = vErrors === null ? validate25.errors : vErrors.concat(validate25.errors);
errors = vErrors.length;
}
}
if(data.implicitRules !== undefined){
if(!(validate30(data.implicitRules, {instancePath:instancePath+"/implicitRules",parentData:data,parentDataProperty:"implicitRules",rootData}))){
vErrors = vErrors === null ? validate30.errors : vErrors.concat(validate30.errors);
errors = vErrors.length;
}
}
if(data._implicitRules !== undefined){
if(!(validate32(data._implicitRules, {instancePath:instancePath+"/_implicitRules",parentData:data,parentDataProperty:"_implicitRules",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.language !== undefined){
if(!(validate91(data.language, {instancePath:instancePath+"/language",parentData:data,parentDataProperty:"language",rootData}))){
vErrors = vErrors === null ? validate91.errors : vErrors.concat(validate91.errors);
errors = vErrors.length;
}
}
if(data._language !== undefined){
if(!(validate32(data._language, {instancePath:instancePath+"/_language",parentData:data,parentDataProperty:"_language",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.text !== undefined){
if(!(validate511(data.text, {instancePath:instancePath+"/text",parentData:data,parentDataProperty:"text",rootData}))){
vErrors = vErrors === null ? validate511.errors : vErrors.concat(validate511.errors);
errors = vErrors.length;
}
}
if(data.contained !== undefined){
let data8 = data.contained;
if(Array.isArray(data8)){
if(data8.length < 1){
const err3 = {instancePath:instancePath+"/contained",schemaPath:"#/properties/contained/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
const len0 = data8.length;
for(let i0=0; i0<len0; i0++){
if(!(wrapper40.validate(data8[i0], {instancePath:instancePath+"/contained/" + i0,parentData:data8,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? wrapper40.validate.errors : vErrors.concat(wrapper40.validate.errors);
errors = vErrors.length;
}
}
}
else {
const err4 = {instancePath:instancePath+"/contained",schemaPath:"#/properties/contained/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.extension !== undefined){
let data10 = data.extension;
if(Array.isArray(data10)){
if(data10.length < 1){
const err5 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
const len1 = data10.length;
for(let i1=0; i1<len1; i1++){
if(!(validate28(data10[i1], {instancePath:instancePath+"/extension/" + i1,parentData:data10,parentDataProperty:i1,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err6 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
if(data.modifierExtension !== undefined){
let data12 = data.modifierExtension;
if(Array.isArray(data12)){
if(data12.length < 1){
const err7 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
const len2 = data12.length;
for(let i2=0; i2<len2; i2++){
if(!(validate28(data12[i2], {instancePath:instancePath+"/modifierExtension/" + i2,parentData:data12,parentDataProperty:i2,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err8 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
}
if(data.identifier !== undefined){
let data14 = data.identifier;
if(Array.isArray(data14)){
if(data14.length < 1){
const err9 = {instancePath:instancePath+"/identifier",schemaPath:"#/properties/identifier/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
const len3 = data14.length;
for(let i3=0; i3<len3; i3++){
if(!(validate103(data14[i3], {instancePath:instancePath+"/identifier/" + i3,parentData:data14,parentDataProperty:i3,rootData}))){
vErrors = vErrors === null ? validate103.errors : vErrors.concat(validate103.errors);
errors = vErrors.length;
}
}
}
else {
const err10 = {instancePath:instancePath+"/identifier",schemaPath:"#/properties/identifier/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err10];
}
else {
vErrors.push(err10);
}
errors++;
}
}
if(data.definition !== undefined){
if(!(validate97(data.definition, {instancePath:instancePath+"/definition",parentData:data,parentDataProperty:"definition",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
if(data.udiCarrier !== undefined){
let data17 = data.udiCarrier;
if(Array.isArray(data17)){
if(data17.length < 1){
const err11 = {instancePath:instancePath+"/udiCarrier",schemaPath:"#/properties/udiCarrier/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err11];
}
else {
vErrors.push(err11);
}
errors++;
}
const len4 = data17.length;
for(let i4=0; i4<len4; i4++){
if(!(validate854(data17[i4], {instancePath:instancePath+"/udiCarrier/" + i4,parentData:data17,parentDataProperty:i4,rootData}))){
vErrors = vErrors === null ? validate854.errors : vErrors.concat(validate854.errors);
errors = vErrors.length;
}
}
}
else {
const err12 = {instancePath:instancePath+"/udiCarrier",schemaPath:"#/properties/udiCarrier/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err12];
}
else {
vErrors.push(err12);
}
errors++;
}
}
if(data.status !== undefined){
let data19 = data.status;
if(!((((data19 === "active") || (data19 === "inactive")) || (data19 === "entered-in-error")) || (data19 === "unknown"))){
const err13 = {instancePath:instancePath+"/status",schemaPath:"#/properties/status/enum",keyword:"enum",params:{allowedValues: schema83.properties.status.enum}};
if(vErrors === null){
vErrors = [err13];
}
else {
vErrors.push(err13);
}
errors++;
}
}
if(data._status !== undefined){
if(!(validate32(data._status, {instancePath:instancePath+"/_status",parentData:data,parentDataProperty:"_status",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.statusReason !== undefined){
let data21 = data.statusReason;
if(Array.isArray(data21)){
if(data21.length < 1){
const err14 = {instancePath:instancePath+"/statusReason",schemaPath:"#/properties/statusReason/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err14];
}
else {
vErrors.push(err14);
}
errors++;
}
const len5 = data21.length;
for(let i5=0; i5<len5; i5++){
if(!(validate106(data21[i5], {instancePath:instancePath+"/statusReason/" + i5,parentData:data21,parentDataProperty:i5,rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
}
else {
const err15 = {instancePath:instancePath+"/statusReason",schemaPath:"#/properties/statusReason/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err15];
}
else {
vErrors.push(err15);
}
errors++;
}
}
if(data.distinctIdentifier !== undefined){
if(!(validate26(data.distinctIdentifier, {instancePath:instancePath+"/distinctIdentifier",parentData:data,parentDataProperty:"distinctIdentifier",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._distinctIdentifier !== undefined){
if(!(validate32(data._distinctIdentifier, {instancePath:instancePath+"/_distinctIdentifier",parentData:data,parentDataProperty:"_distinctIdentifier",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.manufacturer !== undefined){
if(!(validate26(data.manufacturer, {instancePath:instancePath+"/manufacturer",parentData:data,parentDataProperty:"manufacturer",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._manufacturer !== undefined){
if(!(validate32(data._manufacturer, {instancePath:instancePath+"/_manufacturer",parentData:data,parentDataProperty:"_manufacturer",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.manufactureDate !== undefined){
if(!(validate74(data.manufactureDate, {instancePath:instancePath+"/manufactureDate",parentData:data,parentDataProperty:"manufactureDate",rootData}))){
vErrors = vErrors === null ? validate74.errors : vErrors.concat(validate74.errors);
errors = vErrors.length;
}
}
if(data._manufactureDate !== undefined){
if(!(validate32(data._manufactureDate, {instancePath:instancePath+"/_manufactureDate",parentData:data,parentDataProperty:"_manufactureDate",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.expirationDate !== undefined){
if(!(validate74(data.expirationDate, {instancePath:instancePath+"/expirationDate",parentData:data,parentDataProperty:"expirationDate",rootData}))){
vErrors = vErrors === null ? validate74.errors : vErrors.concat(validate74.errors);
errors = vErrors.length;
}
}
if(data._expirationDate !== undefined){
if(!(validate32(data._expirationDate, {instancePath:instancePath+"/_expirationDate",parentData:data,parentDataProperty:"_expirationDate",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.lotNumber !== undefined){
if(!(validate26(data.lotNumber, {instancePath:instancePath+"/lotNumber",parentData:data,parentDataProperty:"lotNumber",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._lotNumber !== undefined){
if(!(validate32(data._lotNumber, {instancePath:instancePath+"/_lotNumber",parentData:data,parentDataProperty:"_lotNumber",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.serialNumber !== undefined){
if(!(validate26(data.serialNumber, {instancePath:instancePath+"/serialNumber",parentData:data,parentDataProperty:"serialNumber",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._serialNumber !== undefined){
if(!(validate32(data._serialNumber, {instancePath:instancePath+"/_serialNumber",parentData:data,parentDataProperty:"_serialNumber",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.deviceName !== undefined){
let data35 = data.deviceName;
if(Array.isArray(data35)){
if(data35.length < 1){
const err16 = {instancePath:instancePath+"/deviceName",schemaPath:"#/properties/deviceName/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err16];
}
else {
vErrors.push(err16);
}
errors++;
}
const len6 = data35.length;
for(let i6=0; i6<len6; i6++){
if(!(validate884(data35[i6], {instancePath:instancePath+"/deviceName/" + i6,parentData:data35,parentDataProperty:i6,rootData}))){
vErrors = vErrors === null ? validate884.errors : vErrors.concat(validate884.errors);
errors = vErrors.length;
}
}
}
else {
const err17 = {instancePath:instancePath+"/deviceName",schemaPath:"#/properties/deviceName/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err17];
}
else {
vErrors.push(err17);
}
errors++;
}
}
if(data.modelNumber !== undefined){
if(!(validate26(data.modelNumber, {instancePath:instancePath+"/modelNumber",parentData:data,parentDataProperty:"modelNumber",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._modelNumber !== undefined){
if(!(validate32(data._modelNumber, {instancePath:instancePath+"/_modelNumber",parentData:data,parentDataProperty:"_modelNumber",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.partNumber !== undefined){
if(!(validate26(data.partNumber, {instancePath:instancePath+"/partNumber",parentData:data,parentDataProperty:"partNumber",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._partNumber !== undefined){
if(!(validate32(data._partNumber, {instancePath:instancePath+"/_partNumber",parentData:data,parentDataProperty:"_partNumber",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.type !== undefined){
if(!(validate106(data.type, {instancePath:instancePath+"/type",parentData:data,parentDataProperty:"type",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.specialization !== undefined){
let data42 = data.specialization;
if(Array.isArray(data42)){
if(data42.length < 1){
const err18 = {instancePath:instancePath+"/specialization",schemaPath:"#/properties/specialization/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err18];
}
else {
vErrors.push(err18);
}
errors++;
}
const len7 = data42.length;
for(let i7=0; i7<len7; i7++){
if(!(validate897(data42[i7], {instancePath:instancePath+"/specialization/" + i7,parentData:data42,parentDataProperty:i7,rootData}))){
vErrors = vErrors === null ? validate897.errors : vErrors.concat(validate897.errors);
errors = vErrors.length;
}
}
}
else {
const err19 = {instancePath:instancePath+"/specialization",schemaPath:"#/properties/specialization/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err19];
}
else {
vErrors.push(err19);
}
errors++;
}
}
if(data.version !== undefined){
let data44 = data.version;
if(Array.isArray(data44)){
if(data44.length < 1){
const err20 = {instancePath:instancePath+"/version",schemaPath:"#/properties/version/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err20];
}
else {
vErrors.push(err20);
}
errors++;
}
const len8 = data44.length;
for(let i8=0; i8<len8; i8++){
if(!(validate905(data44[i8], {instancePath:instancePath+"/version/" + i8,parentData:data44,parentDataProperty:i8,rootData}))){
vErrors = vErrors === null ? validate905.errors : vErrors.concat(validate905.errors);
errors = vErrors.length;
}
}
}
else {
const err21 = {instancePath:instancePath+"/version",schemaPath:"#/properties/version/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err21];
}
else {
vErrors.push(err21);
}
errors++;
}
}
if(data.property !== undefined){
let data46 = data.property;
if(Array.isArray(data46)){
if(data46.length < 1){
const err22 = {instancePath:instancePath+"/property",schemaPath:"#/properties/property/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err22];
}
else {
vErrors.push(err22);
}
errors++;
}
const len9 = data46.length;
for(let i9=0; i9<len9; i9++){
if(!(validate914(data46[i9], {instancePath:instancePath+"/property/" + i9,parentData:data46,parentDataProperty:i9,rootData}))){
vErrors = vErrors === null ? validate914.errors : vErrors.concat(validate914.errors);
errors = vErrors.length;
}
}
}
else {
const err23 = {instancePath:instancePath+"/property",schemaPath:"#/properties/property/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err23];
}
else {
vErrors.push(err23);
}
errors++;
}
}
if(data.patient !== undefined){
if(!(validate97(data.patient, {instancePath:instancePath+"/patient",parentData:data,parentDataProperty:"patient",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
if(data.owner !== undefined){
if(!(validate97(data.owner, {instancePath:instancePath+"/owner",parentData:data,parentDataProperty:"owner",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
if(data.contact !== undefined){
let data50 = data.contact;
if(Array.isArray(data50)){
if(data50.length < 1){
const err24 = {instancePath:instancePath+"/contact",schemaPath:"#/properties/contact/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err24];
}
else {
vErrors.push(err24);
}
errors++;
}
const len10 = data50.length;
for(let i10=0; i10<len10; i10++){
if(!(validate165(data50[i10], {instancePath:instancePath+"/contact/" + i10,parentData:data50,parentDataProperty:i10,rootData}))){
vErrors = vErrors === null ? validate165.errors : vErrors.concat(validate165.errors);
errors = vErrors.length;
}
}
}
else {
const err25 = {instancePath:instancePath+"/contact",schemaPath:"#/properties/contact/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err25];
}
else {
vErrors.push(err25);
}
errors++;
}
}
if(data.location !== undefined){
if(!(validate97(data.location, {instancePath:instancePath+"/location",parentData:data,parentDataProperty:"location",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
if(data.url !== undefined){
if(!(validate30(data.url, {instancePath:instancePath+"/url",parentData:data,parentDataProperty:"url",rootData}))){
vErrors = vErrors === null ? validate30.errors : vErrors.concat(validate30.errors);
errors = vErrors.length;
}
}
if(data._url !== undefined){
if(!(validate32(data._url, {instancePath:instancePath+"/_url",parentData:data,parentDataProperty:"_url",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.note !== undefined){
let data55 = data.note;
if(Array.isArray(data55)){
if(data55.length < 1){
const err26 = {instancePath:instancePath+"/note",schemaPath:"#/properties/note/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err26];
}
else {
vErrors.push(err26);
}
errors++;
}
const len11 = data55.length;
for(let i11=0; i11<len11; i11++){
if(!(validate95(data55[i11], {instancePath:instancePath+"/note/" + i11,parentData:data55,parentDataProperty:i11,rootData}))){
vErrors = vErrors === null ? validate95.errors : vErrors.concat(validate95.errors);
errors = vErrors.length;
}
}
}
else {
const err27 = {instancePath:instancePath+"/note",schemaPath:"#/properties/note/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err27];
}
else {
vErrors.push(err27);
}
errors++;
}
}
if(data.safety !== undefined){
let data57 = data.safety;
if(Array.isArray(data57)){
if(data57.length < 1){
const err28 = {instancePath:instancePath+"/safety",schemaPath:"#/properties/safety/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err28];
}
else {
vErrors.push(err28);
}
errors++;
}
const len12 = data57.length;
for(let i12=0; i12<len12; i12++){
if(!(validate106(data57[i12], {instancePath:instancePath+"/safety/" + i12,parentData:data57,parentDataProperty:i12,rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
}
else {
const err29 = {instancePath:instancePath+"/safety",schemaPath:"#/properties/safety/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err29];
}
else {
vErrors.push(err29);
}
errors++;
}
}
if(data.parent !== undefined){
if(!(validate97(data.parent, {instancePath:instancePath+"/parent",parentData:data,parentDataProperty:"parent",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
}
else {
const err30 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err30];
}
else {
vErrors.push(err30);
}
errors++;
}
validate842.errors = vErrors;
return errors === 0;
}

const schema89 = {"type":"object","properties":{"resourceType":{"const":"MedicationAdministration"},"id":{"$ref":"#/definitions/id"},"meta":{"$ref":"#/definitions/Meta"},"implicitRules":{"$ref":"#/definitions/uri"},"_implicitRules":{"$ref":"#/definitions/Element"},"language":{"$ref":"#/definitions/code"},"_language":{"$ref":"#/definitions/Element"},"text":{"$ref":"#/definitions/Narrative"},"contained":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/ResourceList"}},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"identifier":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Identifier"}},"instantiates":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/uri"}},"_instantiates":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Element"}},"partOf":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"status":{"enum":["in-progress","not-done","on-hold","completed","entered-in-error","stopped","unknown"]},"_status":{"$ref":"#/definitions/Element"},"statusReason":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"category":{"$ref":"#/definitions/CodeableConcept"},"medicationCodeableConcept":{"$ref":"#/definitions/CodeableConcept"},"medicationReference":{"$ref":"#/definitions/Reference"},"subject":{"$ref":"#/definitions/Reference"},"context":{"$ref":"#/definitions/Reference"},"supportingInformation":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"effectiveDateTime":{"type":"string","pattern":"^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1])(T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00)))?)?)?$"},"_effectiveDateTime":{"$ref":"#/definitions/Element"},"effectivePeriod":{"$ref":"#/definitions/Period"},"performer":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/MedicationAdministration_Performer"}},"reasonCode":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"reasonReference":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"request":{"$ref":"#/definitions/Reference"},"device":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"note":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Annotation"}},"dosage":{"$ref":"#/definitions/MedicationAdministration_Dosage"},"eventHistory":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}}},"required":["resourceType","status","subject"],"choices":[{"element":"medication[x]","properties":["medicationCodeableConcept","medicationReference"],"required":true},{"element":"effective[x]","properties":["effectiveDateTime","effectivePeriod"],"required":true}],"additionalProperties":false};
const schema90 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"function":{"$ref":"#/definitions/CodeableConcept"},"actor":{"$ref":"#/definitions/Reference"}},"required":["actor"],"additionalProperties":false};

function validate955(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.actor === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "actor"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
for(const key0 in data){
if(!(((((key0 === "id") || (key0 === "extension")) || (key0 === "modifierExtension")) || (key0 === "function")) || (key0 === "actor"))){
const err1 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err2 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(validate28(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err3 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.modifierExtension !== undefined){
let data3 = data.modifierExtension;
if(Array.isArray(data3)){
if(data3.length < 1){
const err4 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
const len1 = data3.length;
for(let i1=0; i1<len1; i1++){
if(!(validate28(data3[i1], {instancePath:instancePath+"/modifierExtension/" + i1,parentData:data3,parentDataProperty:i1,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err5 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
if(data.function !== undefined){
if(!(validate106(data.function, {instancePath:instancePath+"/function",parentData:data,parentDataProperty:"function",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.actor !== undefined){
if(!(validate97(data.actor, {instancePath:instancePath+"/actor",parentData:data,parentDataProperty:"actor",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
}
else {
const err6 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
validate955.errors = vErrors;
return errors === 0;
}

const schema91 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"text":{"$ref":"#/definitions/string"},"_text":{"$ref":"#/definitions/Element"},"site":{"$ref":"#/definitions/CodeableConcept"},"route":{"$ref":"#/definitions/CodeableConcept"},"method":{"$ref":"#/definitions/CodeableConcept"},"dose":{"$ref":"#/definitions/Quantity"},"rateRatio":{"$ref":"#/definitions/Ratio"},"rateQuantity":{"$ref":"#/definitions/Quantity"}},"choices":[{"element":"rate[x]","properties":["rateRatio","rateQuantity"],"required":false}],"additionalProperties":false};

function validate967(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
for(const key0 in data){
if(!(func2.call(schema91.properties, key0))){
const err0 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err1 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(validate28(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err2 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.modifierExtension !== undefined){
let data3 = data.modifierExtension;
if(Array.isArray(data3)){
if(data3.length < 1){
const err3 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
const len1 = data3.length;
for(let i1=0; i1<len1; i1++){
if(!(validate28(data3[i1], {instancePath:instancePath+"/modifierExtension/" + i1,parentData:data3,parentDataProperty:i1,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err4 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.text !== undefined){
if(!(validate26(data.text, {instancePath:instancePath+"/text",parentData:data,parentDataProperty:"text",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._text !== undefined){
if(!(validate32(data._text, {instancePath:instancePath+"/_text",parentData:data,parentDataProperty:"_text",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.site !== undefined){
if(!(validate106(data.site, {instancePath:instancePath+"/site",parentData:data,parentDataProperty:"site",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.route !== undefined){
if(!(validate106(data.route, {instancePath:instancePath+"/route",parentData:data,parentDataProperty:"route",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.method !== undefined){
if(!(validate106(data.method, {instancePath:instancePath+"/method",parentData:data,parentDataProperty:"method",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.dose !== undefined){
if(!(validate236(data.dose, {instancePath:instancePath+"/dose",parentData:data,parentDataProperty:"dose",rootData}))){
vErrors = vErrors === null ? validate236.errors : vErrors.concat(validate236.errors);
errors = vErrors.length;
}
}
if(data.rateRatio !== undefined){
if(!(validate253(data.rateRatio, {instancePath:instancePath+"/rateRatio",parentData:data,parentDataProperty:"rateRatio",rootData}))){
vErrors = vErrors === null ? validate253.errors : vErrors.concat(validate253.errors);
errors = vErrors.length;
}
}
if(data.rateQuantity !== undefined){
if(!(validate236(data.rateQuantity, {instancePath:instancePath+"/rateQuantity",parentData:data,parentDataProperty:"rateQuantity",rootData}))){
vErrors = vErrors === null ? validate236.errors : vErrors.concat(validate236.errors);
errors = vErrors.length;
}
}
let count0 = 0;
if(data["rateRatio"] !== undefined){
count0++;
}
if(data["rateQuantity"] !== undefined){
count0++;
}
if(count0 > 1){
const err5 = {instancePath,schemaPath:"#/choices",keyword:"choices",params:{}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
else {
const err6 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
validate967.errors = vErrors;
return errors === 0;
}


function validate931(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.resourceType === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "resourceType"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.status === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "status"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(data.subject === undefined){
const err2 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "subject"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
for(const key0 in data){
if(!(func2.call(schema89.properties, key0))){
const err3 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.resourceType !== undefined){
if("MedicationAdministration" !== data.resourceType){
const err4 = {instancePath:instancePath+"/resourceType",schemaPath:"#/properties/resourceType/const",keyword:"const",params:{allowedValue: "MedicationAdministration"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate23(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate23.errors : vErrors.concat(validate23.errors);
errors = vErrors.length;
}
}
if(data.meta !== undefined){
if(!(validate25(data.meta, {instancePath:instancePath+"/meta",parentData:data,parentDataProperty:"meta",rootData}))){
vErrors = vErrors === null ? validate25.errors : vErrors.concat(validate25.errors);
errors = vErrors.length;
}
}
if(data.implicitRules !== undefined){
if(!(validate30(data.implicitRules, {instancePath:instancePath+"/implicitRules",parentData:data,parentDataProperty:"implicitRules",rootData}))){
vErrors = vErrors === null ? validate30.errors : vErrors.concat(validate30.errors);
errors = vErrors.length;
}
}
if(data._implicitRules !== undefined){
if(!(validate32(data._implicitRules, {instancePath:instancePath+"/_implicitRules",parentData:data,parentDataProperty:"_implicitRules",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.language !== undefined){
if(!(validate91(data.language, {instancePath:instancePath+"/language",parentData:data,parentDataProperty:"language",rootData}))){
vErrors = vErrors === null ? validate91.errors : vErrors.concat(validate91.errors);
errors = vErrors.length;
}
}
if(data._language !== undefined){
if(!(validate32(data._language, {instancePath:instancePath+"/_language",parentData:data,parentDataProperty:"_language",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.text !== undefined){
if(!(validate511(data.text, {instancePath:instancePath+"/text",parentData:data,parentDataProperty:"text",rootData}))){
vErrors = vErrors === null ? validate511.errors : vErrors.concat(validate511.errors);
errors = vErrors.length;
}
}
if(data.contained !== undefined){
let data8 = data.contained;
if(Array.isArray(data8)){
if(data8.length < 1){
const err5 = {instancePath:instancePath+"/contained",schemaPath:"#/properties/contained/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
const len0 = data8.length;
for(let i0=0; i0<len0; i0++){
if(!(wrapper40.validate(data8[i0], {instancePath:instancePath+"/contained/" + i0,parentData:data8,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? wrapper40.validate.errors : vErrors.concat(wrapper40.validate.errors);
errors = vErrors.length;
}
}
}
else {
const err6 = {instancePath:instancePath+"/contained",schemaPath:"#/properties/contained/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
if(data.extension !== undefined){
let data10 = data.extension;
if(Array.isArray(data10)){
if(data10.length < 1){
const err7 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
const len1 = data10.length;
for(let i1=0; i1<len1; i1++){
if(!(validate28(data10[i1], {instancePath:instancePath+"/extension/" + i1,parentData:data10,parentDataProperty:i1,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err8 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
}
if(data.modifierExtension !== undefined){
let data12 = data.modifierExtension;
if(Array.isArray(data12)){
if(data12.length < 1){
const err9 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
const len2 = data12.length;
for(let i2=0; i2<len2; i2++){
if(!(validate28(data12[i2], {instancePath:instancePath+"/modifierExtension/" + i2,parentData:data12,parentDataProperty:i2,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err10 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err10];
}
else {
vErrors.push(err10);
}
errors++;
}
}
if(data.identifier !== undefined){
let data14 = data.identifier;
if(Array.isArray(data14)){
if(data14.length < 1){
const err11 = {instancePath:instancePath+"/identifier",schemaPath:"#/properties/identifier/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err11];
}
else {
vErrors.push(err11);
}
errors++;
}
const len3 = data14.length;
for(let i3=0; i3<len3; i3++){
if(!(validate103(data14[i3], {instancePath:instancePath+"/identifier/" + i3,parentData:data14,parentDataProperty:i3,rootData}))){
vErrors = vErrors === null ? validate103.errors : vErrors.concat(validate103.errors);
errors = vErrors.length;
}
}
}
else {
const err12 = {instancePath:instancePath+"/identifier",schemaPath:"#/properties/identifier/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err12];
}
else {
vErrors.push(err12);
}
errors++;
}
}
if(data.instantiates !== undefined){
let data16 = data.instantiates;
if(Array.isArray(data16)){
if(data16.length < 1){
const err13 = {instancePath:instancePath+"/instantiates",schemaPath:"#/properties/instantiates/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err13];
}
else {
vErrors.push(err13);
}
errors++;
}
const len4 = data16.length;
for(let i4=0; i4<len4; i4++){
if(!(validate30(data16[i4], {instancePath:instancePath+"/instantiates/" + i4,parentData:data16,parentDataProperty:i4,rootData}))){
vErrors = vErrors === null ? validate30.errors : vErrors.concat(validate30.errors);
errors = vErrors.length;
}
}
}
else {
const err14 = {instancePath:instancePath+"/instantiates",schemaPath:"#/properties/instantiates/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err14];
}
else {
vErrors.push(err14);
}
errors++;
}
}
if(data._instantiates !== undefined){
let data18 = data._instantiates;
if(Array.isArray(data18)){
if(data18.length < 1){
const err15 = {instancePath:instancePath+"/_instantiates",schemaPath:"#/properties/_instantiates/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err15];
}
else {
vErrors.push(err15);
}
errors++;
}
const len5 = data18.length;
for(let i5=0; i5<len5; i5++){
if(!(validate32(data18[i5], {instancePath:instancePath+"/_instantiates/" + i5,parentData:data18,parentDataProperty:i5,rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
}
else {
const err16 = {instancePath:instancePath+"/_instantiates",schemaPath:"#/properties/_instantiates/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err16];
}
else {
vErrors.push(err16);
}
errors++;
}
}
if(data.partOf !== undefined){
let data20 = data.partOf;
if(Array.isArray(data20)){
if(data20.length < 1){
const err17 = {instancePath:instancePath+"/partOf",schemaPath:"#/properties/partOf/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err17];
}
else {
vErrors.push(err17);
}
errors++;
}
const len6 = data20.length;
for(let i6=0; i6<len6; i6++){
if(!(validate97(data20[i6], {instancePath:instancePath+"/partOf/" + i6,parentData:data20,parentDataProperty:i6,rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
}
else {
const err18 = {instancePath:instancePath+"/partOf",schemaPath:"#/properties/partOf/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err18];
}
else {
vErrors.push(err18);
}
errors++;
}
}
if(data.status !== undefined){
let data22 = data.status;
if(!(((((((data22 === "in-progress") || (data22 === "not-done")) || (data22 === "on-hold")) || (data22 === "completed")) || (data22 === "entered-in-error")) || (data22 === "stopped")) || (data22 === "unknown"))){
const err19 = {instancePath:instancePath+"/status",schemaPath:"#/properties/status/enum",keyword:"enum",params:{allowedValues: schema89.properties.status.enum}};
if(vErrors === null){
vErrors = [err19];
}
else {
vErrors.push(err19);
}
errors++;
}
}
if(data._status !== undefined){
if(!(validate32(data._status, {instancePath:instancePath+"/_status",parentData:data,parentDataProperty:"_status",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.statusReason !== undefined){
let data24 = data.statusReason;
if(Array.isArray(data24)){
if(data24.length < 1){
const err20 = {instancePath:instancePath+"/statusReason",schemaPath:"#/properties/statusReason/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err20];
}
else {
vErrors.push(err20);
}
errors++;
}
const len7 = data24.length;
for(let i7=0; i7<len7; i7++){
if(!(validate106(data24[i7], {instancePath:instancePath+"/statusReason/" + i7,parentData:data24,parentDataProperty:i7,rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
}
else {
const err21 = {instancePath:instancePath+"/statusReason",schemaPath:"#/properties/statusReason/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err21];
}
else {
vErrors.push(err21);
}
errors++;
}
}
if(data.category !== undefined){
if(!(validate106(data.category, {instancePath:instancePath+"/category",parentData:data,parentDataProperty:"category",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.medicationCodeableConcept !== undefined){
if(!(validate106(data.medicationCodeableConcept, {instancePath:instancePath+"/medicationCodeableConcept",parentData:data,parentDataProperty:"medicationCodeableConcept",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.medicationReference !== undefined){
if(!(validate97(data.medicationReference, {instancePath:instancePath+"/medicationReference",parentData:data,parentDataProperty:"medicationReference",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
if(data.subject !== undefined){
if(!(validate97(data.subject, {instancePath:instancePath+"/subject",parentData:data,parentDataProperty:"subject",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
if(data.context !== undefined){
if(!(validate97(data.context, {instancePath:instancePath+"/context",parentData:data,parentDataProperty:"context",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
if(data.supportingInformation !== undefined){
let data31 = data.supportingInformation;
if(Array.isArray(data31)){
if(data31.length < 1){
const err22 = {instancePath:instancePath+"/supportingInformation",schemaPath:"#/properties/supportingInformation/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err22];
}
else {
vErrors.push(err22);
}
errors++;
}
const len8 = data31.length;
for(let i8=0; i8<len8; i8++){
if(!(validate97(data31[i8], {instancePath:instancePath+"/supportingInformation/" + i8,parentData:data31,parentDataProperty:i8,rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
}
else {
const err23 = {instancePath:instancePath+"/supportingInformation",schemaPath:"#/properties/supportingInformation/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err23];
}
else {
vErrors.push(err23);
}
errors++;
}
}
if(data.effectiveDateTime !== undefined){
let data33 = data.effectiveDateTime;
if(typeof data33 === "string"){
if(!pattern7.test(data33)){
const err24 = {instancePath:instancePath+"/effectiveDateTime",schemaPath:"#/properties/effectiveDateTime/pattern",keyword:"pattern",params:{pattern: "^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1])(T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00)))?)?)?$"}};
if(vErrors === null){
vErrors = [err24];
}
else {
vErrors.push(err24);
}
errors++;
}
}
else {
const err25 = {instancePath:instancePath+"/effectiveDateTime",schemaPath:"#/properties/effectiveDateTime/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err25];
}
else {
vErrors.push(err25);
}
errors++;
}
}
if(data._effectiveDateTime !== undefined){
if(!(validate32(data._effectiveDateTime, {instancePath:instancePath+"/_effectiveDateTime",parentData:data,parentDataProperty:"_effectiveDateTime",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.effectivePeriod !== undefined){
if(!(validate72(data.effectivePeriod, {instancePath:instancePath+"/effectivePeriod",parentData:data,parentDataProperty:"effectivePeriod",rootData}))){
vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
errors = vErrors.length;
}
}
if(data.performer !== undefined){
let data36 = data.performer;
if(Array.isArray(data36)){
if(data36.length < 1){
const err26 = {instancePath:instancePath+"/performer",schemaPath:"#/properties/performer/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err26];
}
else {
vErrors.push(err26);
}
errors++;
}
const len9 = data36.length;
for(let i9=0; i9<len9; i9++){
if(!(validate955(data36[i9], {instancePath:instancePath+"/performer/" + i9,parentData:data36,parentDataProperty:i9,rootData}))){
vErrors = vErrors === null ? validate955.errors : vErrors.concat(validate955.errors);
errors = vErrors.length;
}
}
}
else {
const err27 = {instancePath:instancePath+"/performer",schemaPath:"#/properties/performer/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err27];
}
else {
vErrors.push(err27);
}
errors++;
}
}
if(data.reasonCode !== undefined){
let data38 = data.reasonCode;
if(Array.isArray(data38)){
if(data38.length < 1){
const err28 = {instancePath:instancePath+"/reasonCode",schemaPath:"#/properties/reasonCode/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err28];
}
else {
vErrors.push(err28);
}
errors++;
}
const len10 = data38.length;
for(let i10=0; i10<len10; i10++){
if(!(validate106(data38[i10], {instancePath:instancePath+"/reasonCode/" + i10,parentData:data38,parentDataProperty:i10,rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
}
else {
const err29 = {instancePath:instancePath+"/reasonCode",schemaPath:"#/properties/reasonCode/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err29];
}
else {
vErrors.push(err29);
}
errors++;
}
}
if(data.reasonReference !== undefined){
let data40 = data.reasonReference;
if(Array.isArray(data40)){
if(data40.length < 1){
const err30 = {instancePath:instancePath+"/reasonReference",schemaPath:"#/properties/reasonReference/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err30];
}
else {
vErrors.push(err30);
}
errors++;
}
const len11 = data40.length;
for(let i11=0; i11<len11; i11++){
if(!(validate97(data40[i11], {instancePath:instancePath+"/reasonReference/" + i11,parentData:data40,parentDataProperty:i11,rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
}
else {
const err31 = {instancePath:instancePath+"/reasonReference",schemaPath:"#/properties/reasonReference/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err31];
}
else {
vErrors.push(err31);
}
errors++;
}
}
if(data.request !== undefined){
if(!(validate97(data.request, {instancePath:instancePath+"/request",parentData:data,parentDataProperty:"request",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
if(data.device !== undefined){
let data43 = data.device;
if(Array.isArray(data43)){
if(data43.length < 1){
const err32 = {instancePath:instancePath+"/device",schemaPath:"#/properties/device/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err32];
}
else {
vErrors.push(err32);
}
errors++;
}
const len12 = data43.length;
for(let i12=0; i12<len12; i12++){
if(!(validate97(data43[i12], {instancePath:instancePath+"/device/" + i12,parentData:data43,parentDataProperty:i12,rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
}
else {
const err33 = {instancePath:instancePath+"/device",schemaPath:"#/properties/device/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err33];
}
else {
vErrors.push(err33);
}
errors++;
}
}
if(data.note !== undefined){
let data45 = data.note;
if(Array.isArray(data45)){
if(data45.length < 1){
const err34 = {instancePath:instancePath+"/note",schemaPath:"#/properties/note/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err34];
}
else {
vErrors.push(err34);
}
errors++;
}
const len13 = data45.length;
for(let i13=0; i13<len13; i13++){
if(!(validate95(data45[i13], {instancePath:instancePath+"/note/" + i13,parentData:data45,parentDataProperty:i13,rootData}))){
vErrors = vErrors === null ? validate95.errors : vErrors.concat(validate95.errors);
errors = vErrors.length;
}
}
}
else {
const err35 = {instancePath:instancePath+"/note",schemaPath:"#/properties/note/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err35];
}
else {
vErrors.push(err35);
}
errors++;
}
}
if(data.dosage !== undefined){
if(!(validate967(data.dosage, {instancePath:instancePath+"/dosage",parentData:data,parentDataProperty:"dosage",rootData}))){
vErrors = vErrors === null ? validate967.errors : vErrors.concat(validate967.errors);
errors = vErrors.length;
}
}
if(data.eventHistory !== undefined){
let data48 = data.eventHistory;
if(Array.isArray(data48)){
if(data48.length < 1){
const err36 = {instancePath:instancePath+"/eventHistory",schemaPath:"#/properties/eventHistory/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err36];
}
else {
vErrors.push(err36);
}
errors++;
}
const len14 = data48.length;
for(let i14=0; i14<len14; i14++){
if(!(validate97(data48[i14], {instancePath:instancePath+"/eventHistory/" + i14,parentData:data48,parentDataProperty:i14,rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
}
else {
const err37 = {instancePath:instancePath+"/eventHistory",schemaPath:"#/properties/eventHistory/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err37];
}
else {
vErrors.push(err37);
}
errors++;
}
}
let count0 = 0;
if(data["medicationCodeableConcept"] !== undefined){
count0++;
}
if(data["medicationReference"] !== undefined){
count0++;
}
if(count0 !== 1){
const err38 = {instancePath,schemaPath:"#/choices",keyword:"choices",params:{}};
if(vErrors === null){
vErrors = [err38];
}
else {
vErrors.push(err38);
}
errors++;
}
let count1 = 0;
if(data["effectiveDateTime"] !== undefined){
count1++;
}
if(data["effectivePeriod"] !== undefined){
count1++;
}
if(count1 !== 1){
const err39 = {instancePath,schemaPath:"#/choices",keyword:"choices",params:{}};
if(vErrors === null){
vErrors = [err39];
}
else {
vErrors.push(err39);
}
errors++;
}
}
else {
const err40 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err40];
}
else {
vErrors.push(err40);
}
errors++;
}
validate931.errors = vErrors;
return errors === 0;
}

const schema92 = {"type":"object","properties":{"resourceType":{"const":"MedicationStatement"},"id":{"$ref":"#/definitions/id"},"meta":{"$ref":"#/definitions/Meta"},"implicitRules":{"$ref":"#/definitions/uri"},"_implicitRules":{"$ref":"#/definitions/Element"},"language":{"$ref":"#/definitions/code"},"_language":{"$ref":"#/definitions/Element"},"text":{"$ref":"#/definitions/Narrative"},"contained":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/ResourceList"}},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"identifier":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Identifier"}},"basedOn":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"partOf":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"status":{"enum":["active","completed","entered-in-error","intended","stopped","on-hold","unknown","not-taken"]},"_status":{"$ref":"#/definitions/Element"},"statusReason":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"category":{"$ref":"#/definitions/CodeableConcept"},"medicationCodeableConcept":{"$ref":"#/definitions/CodeableConcept"},"medicationReference":{"$ref":"#/definitions/Reference"},"subject":{"$ref":"#/definitions/Reference"},"context":{"$ref":"#/definitions/Reference"},"effectiveDateTime":{"type":"string","pattern":"^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1])(T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00)))?)?)?$"},"_effectiveDateTime":{"$ref":"#/definitions/Element"},"effectivePeriod":{"$ref":"#/definitions/Period"},"dateAsserted":{"$ref":"#/definitions/dateTime"},"_dateAsserted":{"$ref":"#/definitions/Element"},"informationSource":{"$ref":"#/definitions/Reference"},"derivedFrom":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"reasonCode":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"reasonReference":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"note":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Annotation"}},"dosage":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Dosage"}}},"required":["resourceType","status","subject"],"choices":[{"element":"medication[x]","properties":["medicationCodeableConcept","medicationReference"],"required":true},{"element":"effective[x]","properties":["effectiveDateTime","effectivePeriod"],"required":false}],"additionalProperties":false};

function validate981(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.resourceType === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "resourceType"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.status === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "status"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(data.subject === undefined){
const err2 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "subject"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
for(const key0 in data){
if(!(func2.call(schema92.properties, key0))){
const err3 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.resourceType !== undefined){
if("MedicationStatement" !== data.resourceType){
const err4 = {instancePath:instancePath+"/resourceType",schemaPath:"#/properties/resourceType/const",keyword:"const",params:{allowedValue: "MedicationStatement"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate23(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate23.errors : vErrors.concat(validate23.errors);
errors = vErrors.length;
}
}
if(data.meta !== undefined){
if(!(validate25(data.meta, {instancePath:instancePath+"/meta",parentData:data,parentDataProperty:"meta",rootData}))){
vErrors = vErrors === null ? validate25.errors : vErrors.concat(validate25.errors);
errors = vErrors.length;
}
}
if(data.implicitRules !== undefined){
if(!(validate30(data.implicitRules, {instancePath:instancePath+"/implicitRules",parentData:data,parentDataProperty:"implicitRules",rootData}))){
vErrors = vErrors === null ? validate30.errors : vErrors.concat(validate30.errors);
errors = vErrors.length;
}
}
if(data._implicitRules !== undefined){
if(!(validate32(data._implicitRules, {instancePath:instancePath+"/_implicitRules",parentData:data,parentDataProperty:"_implicitRules",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.language !== undefined){
if(!(validate91(data.language, {instancePath:instancePath+"/language",parentData:data,parentDataProperty:"language",rootData}))){
vErrors = vErrors === null ? validate91.errors : vErrors.concat(validate91.errors);
errors = vErrors.length;
}
}
if(data._language !== undefined){
if(!(validate32(data._language, {instancePath:instancePath+"/_language",parentData:data,parentDataProperty:"_language",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.text !== undefined){
if(!(validate511(data.text, {instancePath:instancePath+"/text",parentData:data,parentDataProperty:"text",rootData}))){
vErrors = vErrors === null ? validate511.errors : vErrors.concat(validate511.errors);
errors = vErrors.length;
}
}
if(data.contained !== undefined){
let data8 = data.contained;
if(Array.isArray(data8)){
if(data8.length < 1){
const err5 = {instancePath:instancePath+"/contained",schemaPath:"#/properties/contained/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
const len0 = data8.length;
for(let i0=0; i0<len0; i0++){
if(!(wrapper40.validate(data8[i0], {instancePath:instancePath+"/contained/" + i0,parentData:data8,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? wrapper40.validate.errors : vErrors.concat(wrapper40.validate.errors);
errors = vErrors.length;
}
}
}
else {
const err6 = {instancePath:instancePath+"/contained",schemaPath:"#/properties/contained/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
if(data.extension !== undefined){
let data10 = data.extension;
if(Array.isArray(data10)){
if(data10.length < 1){
const err7 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
const len1 = data10.length;
for(let i1=0; i1<len1; i1++){
if(!(validate28(data10[i1], {instancePath:instancePath+"/extension/" + i1,parentData:data10,parentDataProperty:i1,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err8 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
}
if(data.modifierExtension !== undefined){
let data12 = data.modifierExtension;
if(Array.isArray(data12)){
if(data12.length < 1){
const err9 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
const len2 = data12.length;
for(let i2=0; i2<len2; i2++){
if(!(validate28(data12[i2], {instancePath:instancePath+"/modifierExtension/" + i2,parentData:data12,parentDataProperty:i2,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err10 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err10];
}
else {
vErrors.push(err10);
}
errors++;
}
}
if(data.identifier !== undefined){
let data14 = data.identifier;
if(Array.isArray(data14)){
if(data14.length < 1){
const err11 = {instancePath:instancePath+"/identifier",schemaPath:"#/properties/identifier/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err11];
}
else {
vErrors.push(err11);
}
errors++;
}
const len3 = data14.length;
for(let i3=0; i3<len3; i3++){
if(!(validate103(data14[i3], {instancePath:instancePath+"/identifier/" + i3,parentData:data14,parentDataProperty:i3,rootData}))){
vErrors = vErrors === null ? validate103.errors : vErrors.concat(validate103.errors);
errors = vErrors.length;
}
}
}
else {
const err12 = {instancePath:instancePath+"/identifier",schemaPath:"#/properties/identifier/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err12];
}
else {
vErrors.push(err12);
}
errors++;
}
}
if(data.basedOn !== undefined){
let data16 = data.basedOn;
if(Array.isArray(data16)){
if(data16.length < 1){
const err13 = {instancePath:instancePath+"/basedOn",schemaPath:"#/properties/basedOn/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err13];
}
else {
vErrors.push(err13);
}
errors++;
}
const len4 = data16.length;
for(let i4=0; i4<len4; i4++){
if(!(validate97(data16[i4], {instancePath:instancePath+"/basedOn/" + i4,parentData:data16,parentDataProperty:i4,rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
}
else {
const err14 = {instancePath:instancePath+"/basedOn",schemaPath:"#/properties/basedOn/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err14];
}
else {
vErrors.push(err14);
}
errors++;
}
}
if(data.partOf !== undefined){
let data18 = data.partOf;
if(Array.isArray(data18)){
if(data18.length < 1){
const err15 = {instancePath:instancePath+"/partOf",schemaPath:"#/properties/partOf/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err15];
}
else {
vErrors.push(err15);
}
errors++;
}
const len5 = data18.length;
for(let i5=0; i5<len5; i5++){
if(!(validate97(data18[i5], {instancePath:instancePath+"/partOf/" + i5,parentData:data18,parentDataProperty:i5,rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
}
else {
const err16 = {instancePath:instancePath+"/partOf",schemaPath:"#/properties/partOf/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err16];
}
else {
vErrors.push(err16);
}
errors++;
}
}
if(data.status !== undefined){
let data20 = data.status;
if(!((((((((data20 === "active") || (data20 === "completed")) || (data20 === "entered-in-error")) || (data20 === "intended")) || (data20 === "stopped")) || (data20 === "on-hold")) || (data20 === "unknown")) || (data20 === "not-taken"))){
const err17 = {instancePath:instancePath+"/status",schemaPath:"#/properties/status/enum",keyword:"enum",params:{allowedValues: schema92.properties.status.enum}};
if(vErrors === null){
vErrors = [err17];
}
else {
vErrors.push(err17);
}
errors++;
}
}
if(data._status !== undefined){
if(!(validate32(data._status, {instancePath:instancePath+"/_status",parentData:data,parentDataProperty:"_status",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.statusReason !== undefined){
let data22 = data.statusReason;
if(Array.isArray(data22)){
if(data22.length < 1){
const err18 = {instancePath:instancePath+"/statusReason",schemaPath:"#/properties/statusReason/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err18];
}
else {
vErrors.push(err18);
}
errors++;
}
const len6 = data22.length;
for(let i6=0; i6<len6; i6++){
if(!(validate106(data22[i6], {instancePath:instancePath+"/statusReason/" + i6,parentData:data22,parentDataProperty:i6,rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
}
else {
const err19 = {instancePath:instancePath+"/statusReason",schemaPath:"#/properties/statusReason/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err19];
}
else {
vErrors.push(err19);
}
errors++;
}
}
if(data.category !== undefined){
if(!(validate106(data.category, {instancePath:instancePath+"/category",parentData:data,parentDataProperty:"category",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.medicationCodeableConcept !== undefined){
if(!(validate106(data.medicationCodeableConcept, {instancePath:instancePath+"/medicationCodeableConcept",parentData:data,parentDataProperty:"medicationCodeableConcept",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.medicationReference !== undefined){
if(!(validate97(data.medicationReference, {instancePath:instancePath+"/medicationReference",parentData:data,parentDataProperty:"medicationReference",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
if(data.subject !== undefined){
if(!(validate97(data.subject, {instancePath:instancePath+"/subject",parentData:data,parentDataProperty:"subject",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
if(data.context !== undefined){
if(!(validate97(data.context, {instancePath:instancePath+"/context",parentData:data,parentDataProperty:"context",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
if(data.effectiveDateTime !== undefined){
let data29 = data.effectiveDateTime;
if(typeof data29 === "string"){
if(!pattern7.test(data29)){
const err20 = {instancePath:instancePath+"/effectiveDateTime",schemaPath:"#/properties/effectiveDateTime/pattern",keyword:"pattern",params:{pattern: "^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1])(T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00)))?)?)?$"}};
if(vErrors === null){
vErrors = [err20];
}
else {
vErrors.push(err20);
}
errors++;
}
}
else {
const err21 = {instancePath:instancePath+"/effectiveDateTime",schemaPath:"#/properties/effectiveDateTime/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err21];
}
else {
vErrors.push(err21);
}
errors++;
}
}
if(data._effectiveDateTime !== undefined){
if(!(validate32(data._effectiveDateTime, {instancePath:instancePath+"/_effectiveDateTime",parentData:data,parentDataProperty:"_effectiveDateTime",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.effectivePeriod !== undefined){
if(!(validate72(data.effectivePeriod, {instancePath:instancePath+"/effectivePeriod",parentData:data,parentDataProperty:"effectivePeriod",rootData}))){
vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
errors = vErrors.length;
}
}
if(data.dateAsserted !== undefined){
if(!(validate74(data.dateAsserted, {instancePath:instancePath+"/dateAsserted",parentData:data,parentDataProperty:"dateAsserted",rootData}))){
vErrors = vErrors === null ? validate74.errors : vErrors.concat(validate74.errors);
errors = vErrors.length;
}
}
if(data._dateAsserted !== undefined){
if(!(validate32(data._dateAsserted, {instancePath:instancePath+"/_dateAsserted",parentData:data,parentDataProperty:"_dateAsserted",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.informationSource !== undefined){
if(!(validate97(data.informationSource, {instancePath:instancePath+"/informationSource",parentData:data,parentDataProperty:"informationSource",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
if(data.derivedFrom !== undefined){
let data35 = data.derivedFrom;
if(Array.isArray(data35)){
if(data35.length < 1){
const err22 = {instancePath:instancePath+"/derivedFrom",schemaPath:"#/properties/derivedFrom/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err22];
}
else {
vErrors.push(err22);
}
errors++;
}
const len7 = data35.length;
for(let i7=0; i7<len7; i7++){
if(!(validate97(data35[i7], {instancePath:instancePath+"/derivedFrom/" + i7,parentData:data35,parentDataProperty:i7,rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
}
else {
const err23 = {instancePath:instancePath+"/derivedFrom",schemaPath:"#/properties/derivedFrom/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err23];
}
else {
vErrors.push(err23);
}
errors++;
}
}
if(data.reasonCode !== undefined){
let data37 = data.reasonCode;
if(Array.isArray(data37)){
if(data37.length < 1){
const err24 = {instancePath:instancePath+"/reasonCode",schemaPath:"#/properties/reasonCode/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err24];
}
else {
vErrors.push(err24);
}
errors++;
}
const len8 = data37.length;
for(let i8=0; i8<len8; i8++){
if(!(validate106(data37[i8], {instancePath:instancePath+"/reasonCode/" + i8,parentData:data37,parentDataProperty:i8,rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
}
else {
const err25 = {instancePath:instancePath+"/reasonCode",schemaPath:"#/properties/reasonCode/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err25];
}
else {
vErrors.push(err25);
}
errors++;
}
}
if(data.reasonReference !== undefined){
let data39 = data.reasonReference;
if(Array.isArray(data39)){
if(data39.length < 1){
const err26 = {instancePath:instancePath+"/reasonReference",schemaPath:"#/properties/reasonReference/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err26];
}
else {
vErrors.push(err26);
}
errors++;
}
const len9 = data39.length;
for(let i9=0; i9<len9; i9++){
if(!(validate97(data39[i9], {instancePath:instancePath+"/reasonReference/" + i9,parentData:data39,parentDataProperty:i9,rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
}
else {
const err27 = {instancePath:instancePath+"/reasonReference",schemaPath:"#/properties/reasonReference/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err27];
}
else {
vErrors.push(err27);
}
errors++;
}
}
if(data.note !== undefined){
let data41 = data.note;
if(Array.isArray(data41)){
if(data41.length < 1){
const err28 = {instancePath:instancePath+"/note",schemaPath:"#/properties/note/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err28];
}
else {
vErrors.push(err28);
}
errors++;
}
const len10 = data41.length;
for(let i10=0; i10<len10; i10++){
if(!(validate95(data41[i10], {instancePath:instancePath+"/note/" + i10,parentData:data41,parentDataProperty:i10,rootData}))){
vErrors = vErrors === null ? validate95.errors : vErrors.concat(validate95.errors);
errors = vErrors.length;
}
}
}
else {
const err29 = {instancePath:instancePath+"/note",schemaPath:"#/properties/note/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err29];
}
else {
vErrors.push(err29);
}
errors++;
}
}
if(data.dosage !== undefined){
let data43 = data.dosage;
if(Array.isArray(data43)){
if(data43.length < 1){
const err30 = {instancePath:instancePath+"/dosage",schemaPath:"#/properties/dosage/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err30];
}
else {
vErrors.push(err30);
}
errors++;
}
const len11 = data43.length;
for(let i11=0; i11<len11; i11++){
if(!(validate438(data43[i11], {instancePath:instancePath+"/dosage/" + i11,parentData:data43,parentDataProperty:i11,rootData}))){
vErrors = vErrors === null ? validate438.errors : vErrors.concat(validate438.errors);
errors = vErrors.length;
}
}
}
else {
const err31 = {instancePath:instancePath+"/dosage",schemaPath:"#/properties/dosage/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err31];
}
else {
vErrors.push(err31);
}
errors++;
}
}
let count0 = 0;
if(data["medicationCodeableConcept"] !== undefined){
count0++;
}
if(data["medicationReference"] !== undefined){
count0++;
}
if(count0 !== 1){
const err32 = {instancePath,schemaPath:"#/choices",keyword:"choices",params:{}};
if(vErrors === null){
vErrors = [err32];
}
else {
vErrors.push(err32);
}
errors++;
}
let count1 = 0;
if(data["effectiveDateTime"] !== undefined){
count1++;
}
if(data["effectivePeriod"] !== undefined){
count1++;
}
if(count1 > 1){
const err33 = {instancePath,schemaPath:"#/choices",keyword:"choices",params:{}};
if(vErrors === null){
vErrors = [err33];
}
else {
vErrors.push(err33);
}
errors++;
}
}
else {
const err34 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err34];
}
else {
vErrors.push(err34);
}
errors++;
}
validate981.errors = vErrors;
return errors === 0;
}

const schema93 = {"type":"object","properties":{"resourceType":{"const":"Media"},"id":{"$ref":"#/definitions/id"},"meta":{"$ref":"#/definitions/Meta"},"implicitRules":{"$ref":"#/definitions/uri"},"_implicitRules":{"$ref":"#/definitions/Element"},"language":{"$ref":"#/definitions/code"},"_language":{"$ref":"#/definitions/Element"},"text":{"$ref":"#/definitions/Narrative"},"contained":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/ResourceList"}},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"identifier":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Identifier"}},"basedOn":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"partOf":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"status":{"enum":["preparation","in-progress","not-done","on-hold","stopped","completed","entered-in-error","unknown"]},"_status":{"$ref":"#/definitions/Element"},"type":{"$ref":"#/definitions/CodeableConcept"},"modality":{"$ref":"#/definitions/CodeableConcept"},"view":{"$ref":"#/definitions/CodeableConcept"},"subject":{"$ref":"#/definitions/Reference"},"encounter":{"$ref":"#/definitions/Reference"},"createdDateTime":{"type":"string","pattern":"^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1])(T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00)))?)?)?$"},"_createdDateTime":{"$ref":"#/definitions/Element"},"createdPeriod":{"$ref":"#/definitions/Period"},"issued":{"$ref":"#/definitions/instant"},"_issued":{"$ref":"#/definitions/Element"},"operator":{"$ref":"#/definitions/Reference"},"reasonCode":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"bodySite":{"$ref":"#/definitions/CodeableConcept"},"deviceName":{"$ref":"#/definitions/string"},"_deviceName":{"$ref":"#/definitions/Element"},"device":{"$ref":"#/definitions/Reference"},"height":{"$ref":"#/definitions/positiveInt"},"_height":{"$ref":"#/definitions/Element"},"width":{"$ref":"#/definitions/positiveInt"},"_width":{"$ref":"#/definitions/Element"},"frames":{"$ref":"#/definitions/positiveInt"},"_frames":{"$ref":"#/definitions/Element"},"duration":{"$ref":"#/definitions/decimal"},"_duration":{"$ref":"#/definitions/Element"},"content":{"$ref":"#/definitions/Attachment"},"note":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Annotation"}}},"required":["content","resourceType","status"],"choices":[{"element":"created[x]","properties":["createdDateTime","createdPeriod"],"required":false}],"additionalProperties":false};

function validate1011(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.content === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "content"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.resourceType === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "resourceType"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(data.status === undefined){
const err2 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "status"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
for(const key0 in data){
if(!(func2.call(schema93.properties, key0))){
const err3 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.resourceType !== undefined){
if("Media" !== data.resourceType){
const err4 = {instancePath:instancePath+"/resourceType",schemaPath:"#/properties/resourceType/const",keyword:"const",params:{allowedValue: "Media"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate23(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate23.errors : vErrors.concat(validate23.errors);
errors = vErrors.length;
}
}
if(data.meta !== undefined){
if(!(validate25(data.meta, {instancePath:instancePath+"/meta",parentData:data,parentDataProperty:"meta",rootData}))){
vErrors = vErrors === null ? validate25.errors : vErrors.concat(validate25.errors);
errors = vErrors.length;
}
}
if(data.implicitRules !== undefined){
if(!(validate30(data.implicitRules, {instancePath:instancePath+"/implicitRules",parentData:data,parentDataProperty:"implicitRules",rootData}))){
vErrors = vErrors === null ? validate30.errors : vErrors.concat(validate30.errors);
errors = vErrors.length;
}
}
if(data._implicitRules !== undefined){
if(!(validate32(data._implicitRules, {instancePath:instancePath+"/_implicitRules",parentData:data,parentDataProperty:"_implicitRules",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.language !== undefined){
if(!(validate91(data.language, {instancePath:instancePath+"/language",parentData:data,parentDataProperty:"language",rootData}))){
vErrors = vErrors === null ? validate91.errors : vErrors.concat(validate91.errors);
errors = vErrors.length;
}
}
if(data._language !== undefined){
if(!(validate32(data._language, {instancePath:instancePath+"/_language",parentData:data,parentDataProperty:"_language",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.text !== undefined){
if(!(validate511(data.text, {instancePath:instancePath+"/text",parentData:data,parentDataProperty:"text",rootData}))){
vErrors = vErrors === null ? validate511.errors : vErrors.concat(validate511.errors);
errors = vErrors.length;
}
}
if(data.contained !== undefined){
let data8 = data.contained;
if(Array.isArray(data8)){
if(data8.length < 1){
const err5 = {instancePath:instancePath+"/contained",schemaPath:"#/properties/contained/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
const len0 = data8.length;
for(let i0=0; i0<len0; i0++){
if(!(wrapper40.validate(data8[i0], {instancePath:instancePath+"/contained/" + i0,parentData:data8,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? wrapper40.validate.errors : vErrors.concat(wrapper40.validate.errors);
errors = vErrors.length;
}
}
}
else {
const err6 = {instancePath:instancePath+"/contained",schemaPath:"#/properties/contained/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
if(data.extension !== undefined){
let data10 = data.extension;
if(Array.isArray(data10)){
if(data10.length < 1){
const err7 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
const len1 = data10.length;
for(let i1=0; i1<len1; i1++){
if(!(validate28(data10[i1], {instancePath:instancePath+"/extension/" + i1,parentData:data10,parentDataProperty:i1,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err8 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
}
if(data.modifierExtension !== undefined){
let data12 = data.modifierExtension;
if(Array.isArray(data12)){
if(data12.length < 1){
const err9 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
const len2 = data12.length;
for(let i2=0; i2<len2; i2++){
if(!(validate28(data12[i2], {instancePath:instancePath+"/modifierExtension/" + i2,parentData:data12,parentDataProperty:i2,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err10 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err10];
}
else {
vErrors.push(err10);
}
errors++;
}
}
if(data.identifier !== undefined){
let data14 = data.identifier;
if(Array.isArray(data14)){
if(data14.length < 1){
const err11 = {instancePath:instancePath+"/identifier",schemaPath:"#/properties/identifier/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err11];
}
else {
vErrors.push(err11);
}
errors++;
}
const len3 = data14.length;
for(let i3=0; i3<len3; i3++){
if(!(validate103(data14[i3], {instancePath:instancePath+"/identifier/" + i3,parentData:data14,parentDataProperty:i3,rootData}))){
vErrors = vErrors === null ? validate103.errors : vErrors.concat(validate103.errors);
errors = vErrors.length;
}
}
}
else {
const err12 = {instancePath:instancePath+"/identifier",schemaPath:"#/properties/identifier/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err12];
}
else {
vErrors.push(err12);
}
errors++;
}
}
if(data.basedOn !== undefined){
let data16 = data.basedOn;
if(Array.isArray(data16)){
if(data16.length < 1){
const err13 = {instancePath:instancePath+"/basedOn",schemaPath:"#/properties/basedOn/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err13];
}
else {
vErrors.push(err13);
}
errors++;
}
const len4 = data16.length;
for(let i4=0; i4<len4; i4++){
if(!(validate97(data16[i4], {instancePath:instancePath+"/basedOn/" + i4,parentData:data16,parentDataProperty:i4,rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
}
else {
const err14 = {instancePath:instancePath+"/basedOn",schemaPath:"#/properties/basedOn/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err14];
}
else {
vErrors.push(err14);
}
errors++;
}
}
if(data.partOf !== undefined){
let data18 = data.partOf;
if(Array.isArray(data18)){
if(data18.length < 1){
const err15 = {instancePath:instancePath+"/partOf",schemaPath:"#/properties/partOf/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err15];
}
else {
vErrors.push(err15);
}
errors++;
}
const len5 = data18.length;
for(let i5=0; i5<len5; i5++){
if(!(validate97(data18[i5], {instancePath:instancePath+"/partOf/" + i5,parentData:data18,parentDataProperty:i5,rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
}
else {
const err16 = {instancePath:instancePath+"/partOf",schemaPath:"#/properties/partOf/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err16];
}
else {
vErrors.push(err16);
}
errors++;
}
}
if(data.status !== undefined){
let data20 = data.status;
if(!((((((((data20 === "preparation") || (data20 === "in-progress")) || (data20 === "not-done")) || (data20 === "on-hold")) || (data20 === "stopped")) || (data20 === "completed")) || (data20 === "entered-in-error")) || (data20 === "unknown"))){
const err17 = {instancePath:instancePath+"/status",schemaPath:"#/properties/status/enum",keyword:"enum",params:{allowedValues: schema93.properties.status.enum}};
if(vErrors === null){
vErrors = [err17];
}
else {
vErrors.push(err17);
}
errors++;
}
}
if(data._status !== undefined){
if(!(validate32(data._status, {instancePath:instancePath+"/_status",parentData:data,parentDataProperty:"_status",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.type !== undefined){
if(!(validate106(data.type, {instancePath:instancePath+"/type",parentData:data,parentDataProperty:"type",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.modality !== undefined){
if(!(validate106(data.modality, {instancePath:instancePath+"/modality",parentData:data,parentDataProperty:"modality",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.view !== undefined){
if(!(validate106(data.view, {instancePath:instancePath+"/view",parentData:data,parentDataProperty:"view",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.subject !== undefined){
if(!(validate97(data.subject, {instancePath:instancePath+"/subject",parentData:data,parentDataProperty:"subject",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
if(data.encounter !== undefined){
if(!(validate97(data.encounter, {instancePath:instancePath+"/encounter",parentData:data,parentDataProperty:"encounter",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
if(data.createdDateTime !== undefined){
let data27 = data.createdDateTime;
if(typeof data27 === "string"){
if(!pattern7.test(data27)){
const err18 = {instancePath:instancePath+"/createdDateTime",schemaPath:"#/properties/createdDateTime/pattern",keyword:"pattern",params:{pattern: "^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1])(T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00)))?)?)?$"}};
if(vErrors === null){
vErrors = [err18];
}
else {
vErrors.push(err18);
}
errors++;
}
}
else {
const err19 = {instancePath:instancePath+"/createdDateTime",schemaPath:"#/properties/createdDateTime/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err19];
}
else {
vErrors.push(err19);
}
errors++;
}
}
if(data._createdDateTime !== undefined){
if(!(validate32(data._createdDateTime, {instancePath:instancePath+"/_createdDateTime",parentData:data,parentDataProperty:"_createdDateTime",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.createdPeriod !== undefined){
if(!(validate72(data.createdPeriod, {instancePath:instancePath+"/createdPeriod",parentData:data,parentDataProperty:"createdPeriod",rootData}))){
vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
errors = vErrors.length;
}
}
if(data.issued !== undefined){
if(!(validate278(data.issued, {instancePath:instancePath+"/issued",parentData:data,parentDataProperty:"issued",rootData}))){
vErrors = vErrors === null ? validate278.errors : vErrors.concat(validate278.errors);
errors = vErrors.length;
}
}
if(data._issued !== undefined){
if(!(validate32(data._issued, {instancePath:instancePath+"/_issued",parentData:data,parentDataProperty:"_issued",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.operator !== undefined){
if(!(validate97(data.operator, {instancePath:instancePath+"/operator",parentData:data,parentDataProperty:"operator",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
if(data.reasonCode !== undefined){
let data33 = data.reasonCode;
if(Array.isArray(data33)){
if(data33.length < 1){
const err20 = {instancePath:instancePath+"/reasonCode",schemaPath:"#/properties/reasonCode/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err20];
}
else {
vErrors.push(err20);
}
errors++;
}
const len6 = data33.length;
for(let i6=0; i6<len6; i6++){
if(!(validate106(data33[i6], {instancePath:instancePath+"/reasonCode/" + i6,parentData:data33,parentDataProperty:i6,rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
}
else {
const err21 = {instancePath:instancePath+"/reasonCode",schemaPath:"#/properties/reasonCode/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err21];
}
else {
vErrors.push(err21);
}
errors++;
}
}
if(data.bodySite !== undefined){
if(!(validate106(data.bodySite, {instancePath:instancePath+"/bodySite",parentData:data,parentDataProperty:"bodySite",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.deviceName !== undefined){
if(!(validate26(data.deviceName, {instancePath:instancePath+"/deviceName",parentData:data,parentDataProperty:"deviceName",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._deviceName !== undefined){
if(!(validate32(data._deviceName, {instancePath:instancePath+"/_deviceName",parentData:data,parentDataProperty:"_deviceName",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.device !== undefined){
if(!(validate97(data.device, {instancePath:instancePath+"/device",parentData:data,parentDataProperty:"device",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
if(data.height !== undefined){
if(!(validate171(data.height, {instancePath:instancePath+"/height",parentData:data,parentDataProperty:"height",rootData}))){
vErrors = vErrors === null ? validate171.errors : vErrors.concat(validate171.errors);
errors = vErrors.length;
}
}
if(data._height !== undefined){
if(!(validate32(data._height, {instancePath:instancePath+"/_height",parentData:data,parentDataProperty:"_height",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.width !== undefined){
if(!(validate171(data.width, {instancePath:instancePath+"/width",parentData:data,parentDataProperty:"width",rootData}))){
vErrors = vErrors === null ? validate171.errors : vErrors.concat(validate171.errors);
errors = vErrors.length;
}
}
if(data._width !== undefined){
if(!(validate32(data._width, {instancePath:instancePath+"/_width",parentData:data,parentDataProperty:"_width",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.frames !== undefined){
if(!(validate171(data.frames, {instancePath:instancePath+"/frames",parentData:data,parentDataProperty:"frames",rootData}))){
vErrors = vErrors === null ? validate171.errors : vErrors.concat(validate171.errors);
errors = vErrors.length;
}
}
if(data._frames !== undefined){
if(!(validate32(data._frames, {instancePath:instancePath+"/_frames",parentData:data,parentDataProperty:"_frames",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.duration !== undefined){
if(!(validate83(data.duration, {instancePath:instancePath+"/duration",parentData:data,parentDataProperty:"duration",rootData}))){
vErrors = vErrors === null ? validate83.errors : vErrors.concat(validate83.errors);
errors = vErrors.length;
}
}
if(data._duration !== undefined){
if(!(validate32(data._duration, {instancePath:instancePath+"/_duration",parentData:data,parentDataProperty:"_duration",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.content !== undefined){
if(!(validate141(data.content, {instancePath:instancePath+"/content",parentData:data,parentDataProperty:"content",rootData}))){
vErrors = vErrors === null ? validate141.errors : vErrors.concat(validate141.errors);
errors = vErrors.length;
}
}
if(data.note !== undefined){
let data48 = data.note;
if(Array.isArray(data48)){
if(data48.length < 1){
const err22 = {instancePath:instancePath+"/note",schemaPath:"#/properties/note/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err22];
}
else {
vErrors.push(err22);
}
errors++;
}
const len7 = data48.length;
for(let i7=0; i7<len7; i7++){
if(!(validate95(data48[i7], {instancePath:instancePath+"/note/" + i7,parentData:data48,parentDataProperty:i7,rootData}))){
vErrors = vErrors === null ? validate95.errors : vErrors.concat(validate95.errors);
errors = vErrors.length;
}
}
}
else {
const err23 = {instancePath:instancePath+"/note",schemaPath:"#/properties/note/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err23];
}
else {
vErrors.push(err23);
}
errors++;
}
}
let count0 = 0;
if(data["createdDateTime"] !== undefined){
count0++;
}
if(data["createdPeriod"] !== undefined){
count0++;
}
if(count0 > 1){
const err24 = {instancePath,schemaPath:"#/choices",keyword:"choices",params:{}};
if(vErrors === null){
vErrors = [err24];
}
else {
vErrors.push(err24);
}
errors++;
}
}
else {
const err25 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err25];
}
else {
vErrors.push(err25);
}
errors++;
}
validate1011.errors = vErrors;
return errors === 0;
}

const schema94 = {"type":"object","properties":{"resourceType":{"const":"Provenance"},"id":{"$ref":"#/definitions/id"},"meta":{"$ref":"#/definitions/Meta"},"implicitRules":{"$ref":"#/definitions/uri"},"_implicitRules":{"$ref":"#/definitions/Element"},"language":{"$ref":"#/definitions/code"},"_language":{"$ref":"#/definitions/Element"},"text":{"$ref":"#/definitions/Narrative"},"contained":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/ResourceList"}},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"target":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"occurredPeriod":{"$ref":"#/definitions/Period"},"occurredDateTime":{"type":"string","pattern":"^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1])(T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00)))?)?)?$"},"_occurredDateTime":{"$ref":"#/definitions/Element"},"recorded":{"$ref":"#/definitions/instant"},"_recorded":{"$ref":"#/definitions/Element"},"policy":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/uri"}},"_policy":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Element"}},"location":{"$ref":"#/definitions/Reference"},"reason":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"activity":{"$ref":"#/definitions/CodeableConcept"},"agent":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Provenance_Agent"}},"entity":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Provenance_Entity"}},"signature":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Signature"}}},"required":["agent","recorded","resourceType","target"],"choices":[{"element":"occurred[x]","properties":["occurredPeriod","occurredDateTime"],"required":false}],"additionalProperties":false};
const schema95 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"type":{"$ref":"#/definitions/CodeableConcept"},"role":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"who":{"$ref":"#/definitions/Reference"},"onBehalfOf":{"$ref":"#/definitions/Reference"}},"required":["who"],"additionalProperties":false};

function validate1070(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.who === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "who"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
for(const key0 in data){
if(!(((((((key0 === "id") || (key0 === "extension")) || (key0 === "modifierExtension")) || (key0 === "type")) || (key0 === "role")) || (key0 === "who")) || (key0 === "onBehalfOf"))){
const err1 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err2 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(validate28(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err3 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.modifierExtension !== undefined){
let data3 = data.modifierExtension;
if(Array.isArray(data3)){
if(data3.length < 1){
const err4 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
const len1 = data3.length;
for(let i1=0; i1<len1; i1++){
if(!(validate28(data3[i1], {instancePath:instancePath+"/modifierExtension/" + i1,parentData:data3,parentDataProperty:i1,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err5 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
if(data.type !== undefined){
if(!(validate106(data.type, {instancePath:instancePath+"/type",parentData:data,parentDataProperty:"type",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.role !== undefined){
let data6 = data.role;
if(Array.isArray(data6)){
if(data6.length < 1){
const err6 = {instancePath:instancePath+"/role",schemaPath:"#/properties/role/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
const len2 = data6.length;
for(let i2=0; i2<len2; i2++){
if(!(validate106(data6[i2], {instancePath:instancePath+"/role/" + i2,parentData:data6,parentDataProperty:i2,rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
}
else {
const err7 = {instancePath:instancePath+"/role",schemaPath:"#/properties/role/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
}
if(data.who !== undefined){
if(!(validate97(data.who, {instancePath:instancePath+"/who",parentData:data,parentDataProperty:"who",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
if(data.onBehalfOf !== undefined){
if(!(validate97(data.onBehalfOf, {instancePath:instancePath+"/onBehalfOf",parentData:data,parentDataProperty:"onBehalfOf",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
}
else {
const err8 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
validate1070.errors = vErrors;
return errors === 0;
}

const schema96 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"role":{"enum":["derivation","revision","quotation","source","removal"]},"_role":{"$ref":"#/definitions/Element"},"what":{"$ref":"#/definitions/Reference"},"agent":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Provenance_Agent"}}},"required":["role","what"],"additionalProperties":false};

function validate1079(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.role === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "role"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.what === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "what"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
for(const key0 in data){
if(!(((((((key0 === "id") || (key0 === "extension")) || (key0 === "modifierExtension")) || (key0 === "role")) || (key0 === "_role")) || (key0 === "what")) || (key0 === "agent"))){
const err2 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err3 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(validate28(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err4 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.modifierExtension !== undefined){
let data3 = data.modifierExtension;
if(Array.isArray(data3)){
if(data3.length < 1){
const err5 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
const len1 = data3.length;
for(let i1=0; i1<len1; i1++){
if(!(validate28(data3[i1], {instancePath:instancePath+"/modifierExtension/" + i1,parentData:data3,parentDataProperty:i1,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err6 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
if(data.role !== undefined){
let data5 = data.role;
if(!(((((data5 === "derivation") || (data5 === "revision")) || (data5 === "quotation")) || (data5 === "source")) || (data5 === "removal"))){
const err7 = {instancePath:instancePath+"/role",schemaPath:"#/properties/role/enum",keyword:"enum",params:{allowedValues: schema96.properties.role.enum}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
}
if(data._role !== undefined){
if(!(validate32(data._role, {instancePath:instancePath+"/_role",parentData:data,parentDataProperty:"_role",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.what !== undefined){
if(!(validate97(data.what, {instancePath:instancePath+"/what",parentData:data,parentDataProperty:"what",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
if(data.agent !== undefined){
let data8 = data.agent;
if(Array.isArray(data8)){
if(data8.length < 1){
const err8 = {instancePath:instancePath+"/agent",schemaPath:"#/properties/agent/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
const len2 = data8.length;
for(let i2=0; i2<len2; i2++){
if(!(validate1070(data8[i2], {instancePath:instancePath+"/agent/" + i2,parentData:data8,parentDataProperty:i2,rootData}))){
vErrors = vErrors === null ? validate1070.errors : vErrors.concat(validate1070.errors);
errors = vErrors.length;
}
}
}
else {
const err9 = {instancePath:instancePath+"/agent",schemaPath:"#/properties/agent/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
}
}
else {
const err10 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err10];
}
else {
vErrors.push(err10);
}
errors++;
}
validate1079.errors = vErrors;
return errors === 0;
}


function validate1050(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.agent === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "agent"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.recorded === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "recorded"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(data.resourceType === undefined){
const err2 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "resourceType"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
if(data.target === undefined){
const err3 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "target"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
for(const key0 in data){
if(!(func2.call(schema94.properties, key0))){
const err4 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.resourceType !== undefined){
if("Provenance" !== data.resourceType){
const err5 = {instancePath:instancePath+"/resourceType",schemaPath:"#/properties/resourceType/const",keyword:"const",params:{allowedValue: "Provenance"}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate23(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate23.errors : vErrors.concat(validate23.errors);
errors = vErrors.length;
}
}
if(data.meta !== undefined){
if(!(validate25(data.meta, {instancePath:instancePath+"/meta",parentData:data,parentDataProperty:"meta",rootData}))){
vErrors = vErrors === null ? validate25.errors : vErrors.concat(validate25.errors);
errors = vErrors.length;
}
}
if(data.implicitRules !== undefined){
if(!(validate30(data.implicitRules, {instancePath:instancePath+"/implicitRules",parentData:data,parentDataProperty:"implicitRules",rootData}))){
vErrors = vErrors === null ? validate30.errors : vErrors.concat(validate30.errors);
errors = vErrors.length;
}
}
if(data._implicitRules !== undefined){
if(!(validate32(data._implicitRules, {instancePath:instancePath+"/_implicitRules",parentData:data,parentDataProperty:"_implicitRules",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.language !== undefined){
if(!(validate91(data.language, {instancePath:instancePath+"/language",parentData:data,parentDataProperty:"language",rootData}))){
vErrors = vErrors === null ? validate91.errors : vErrors.concat(validate91.errors);
errors = vErrors.length;
}
}
if(data._language !== undefined){
if(!(validate32(data._language, {instancePath:instancePath+"/_language",parentData:data,parentDataProperty:"_language",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.text !== undefined){
if(!(validate511(data.text, {instancePath:instancePath+"/text",parentData:data,parentDataProperty:"text",rootData}))){
vErrors = vErrors === null ? validate511.errors : vErrors.concat(validate511.errors);
errors = vErrors.length;
}
}
if(data.contained !== undefined){
let data8 = data.contained;
if(Array.isArray(data8)){
if(data8.length < 1){
const err6 = {instancePath:instancePath+"/contained",schemaPath:"#/properties/contained/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
const len0 = data8.length;
for(let i0=0; i0<len0; i0++){
if(!(wrapper40.validate(data8[i0], {instancePath:instancePath+"/contained/" + i0,parentData:data8,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? wrapper40.validate.errors : vErrors.concat(wrapper40.validate.errors);
errors = vErrors.length;
}
}
}
else {
const err7 = {instancePath:instancePath+"/contained",schemaPath:"#/properties/contained/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
}
if(data.extension !== undefined){
let data10 = data.extension;
if(Array.isArray(data10)){
if(data10.length < 1){
const err8 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
const len1 = data10.length;
for(let i1=0; i1<len1; i1++){
if(!(validate28(data10[i1], {instancePath:instancePath+"/extension/" + i1,parentData:data10,parentDataProperty:i1,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err9 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
}
if(data.modifierExtension !== undefined){
let data12 = data.modifierExtension;
if(Array.isArray(data12)){
if(data12.length < 1){
const err10 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err10];
}
else {
vErrors.push(err10);
}
errors++;
}
const len2 = data12.length;
for(let i2=0; i2<len2; i2++){
if(!(validate28(data12[i2], {instancePath:instancePath+"/modifierExtension/" + i2,parentData:data12,parentDataProperty:i2,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err11 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err11];
}
else {
vErrors.push(err11);
}
errors++;
}
}
if(data.target !== undefined){
let data14 = data.target;
if(Array.isArray(data14)){
if(data14.length < 1){
const err12 = {instancePath:instancePath+"/target",schemaPath:"#/properties/target/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err12];
}
else {
vErrors.push(err12);
}
errors++;
}
const len3 = data14.length;
for(let i3=0; i3<len3; i3++){
if(!(validate97(data14[i3], {instancePath:instancePath+"/target/" + i3,parentData:data14,parentDataProperty:i3,rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
}
else {
const err13 = {instancePath:instancePath+"/target",schemaPath:"#/properties/target/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err13];
}
else {
vErrors.push(err13);
}
errors++;
}
}
if(data.occurredPeriod !== undefined){
if(!(validate72(data.occurredPeriod, {instancePath:instancePath+"/occurredPeriod",parentData:data,parentDataProperty:"occurredPeriod",rootData}))){
vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
errors = vErrors.length;
}
}
if(data.occurredDateTime !== undefined){
let data17 = data.occurredDateTime;
if(typeof data17 === "string"){
if(!pattern7.test(data17)){
const err14 = {instancePath:instancePath+"/occurredDateTime",schemaPath:"#/properties/occurredDateTime/pattern",keyword:"pattern",params:{pattern: "^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1])(T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00)))?)?)?$"}};
if(vErrors === null){
vErrors = [err14];
}
else {
vErrors.push(err14);
}
errors++;
}
}
else {
const err15 = {instancePath:instancePath+"/occurredDateTime",schemaPath:"#/properties/occurredDateTime/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err15];
}
else {
vErrors.push(err15);
}
errors++;
}
}
if(data._occurredDateTime !== undefined){
if(!(validate32(data._occurredDateTime, {instancePath:instancePath+"/_occurredDateTime",parentData:data,parentDataProperty:"_occurredDateTime",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.recorded !== undefined){
if(!(validate278(data.recorded, {instancePath:instancePath+"/recorded",parentData:data,parentDataProperty:"recorded",rootData}))){
vErrors = vErrors === null ? validate278.errors : vErrors.concat(validate278.errors);
errors = vErrors.length;
}
}
if(data._recorded !== undefined){
if(!(validate32(data._recorded, {instancePath:instancePath+"/_recorded",parentData:data,parentDataProperty:"_recorded",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.policy !== undefined){
let data21 = data.policy;
if(Array.isArray(data21)){
if(data21.length < 1){
const err16 = {instancePath:instancePath+"/policy",schemaPath:"#/properties/policy/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err16];
}
else {
vErrors.push(err16);
}
errors++;
}
const len4 = data21.length;
for(let i4=0; i4<len4; i4++){
if(!(validate30(data21[i4], {instancePath:instancePath+"/policy/" + i4,parentData:data21,parentDataProperty:i4,rootData}))){
vErrors = vErrors === null ? validate30.errors : vErrors.concat(validate30.errors);
errors = vErrors.length;
}
}
}
else {
const err17 = {instancePath:instancePath+"/policy",schemaPath:"#/properties/policy/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err17];
}
else {
vErrors.push(err17);
}
errors++;
}
}
if(data._policy !== undefined){
let data23 = data._policy;
if(Array.isArray(data23)){
if(data23.length < 1){
const err18 = {instancePath:instancePath+"/_policy",schemaPath:"#/properties/_policy/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err18];
}
else {
vErrors.push(err18);
}
errors++;
}
const len5 = data23.length;
for(let i5=0; i5<len5; i5++){
if(!(validate32(data23[i5], {instancePath:instancePath+"/_policy/" + i5,parentData:data23,parentDataProperty:i5,rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
}
else {
const err19 = {instancePath:instancePath+"/_policy",schemaPath:"#/properties/_policy/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err19];
}
else {
vErrors.push(err19);
}
errors++;
}
}
if(data.location !== undefined){
if(!(validate97(data.location, {instancePath:instancePath+"/location",parentData:data,parentDataProperty:"location",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
if(data.reason !== undefined){
let data26 = data.reason;
if(Array.isArray(data26)){
if(data26.length < 1){
const err20 = {instancePath:instancePath+"/reason",schemaPath:"#/properties/reason/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err20];
}
else {
vErrors.push(err20);
}
errors++;
}
const len6 = data26.length;
for(let i6=0; i6<len6; i6++){
if(!(validate106(data26[i6], {instancePath:instancePath+"/reason/" + i6,parentData:data26,parentDataProperty:i6,rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
}
else {
const err21 = {instancePath:instancePath+"/reason",schemaPath:"#/properties/reason/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err21];
}
else {
vErrors.push(err21);
}
errors++;
}
}
if(data.activity !== undefined){
if(!(validate106(data.activity, {instancePath:instancePath+"/activity",parentData:data,parentDataProperty:"activity",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.agent !== undefined){
let data29 = data.agent;
if(Array.isArray(data29)){
if(data29.length < 1){
const err22 = {instancePath:instancePath+"/agent",schemaPath:"#/properties/agent/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err22];
}
else {
vErrors.push(err22);
}
errors++;
}
const len7 = data29.length;
for(let i7=0; i7<len7; i7++){
if(!(validate1070(data29[i7], {instancePath:instancePath+"/agent/" + i7,parentData:data29,parentDataProperty:i7,rootData}))){
vErrors = vErrors === null ? validate1070.errors : vErrors.concat(validate1070.errors);
errors = vErrors.length;
}
}
}
else {
const err23 = {instancePath:instancePath+"/agent",schemaPath:"#/properties/agent/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err23];
}
else {
vErrors.push(err23);
}
errors++;
}
}
if(data.entity !== undefined){
let data31 = data.entity;
if(Array.isArray(data31)){
if(data31.length < 1){
const err24 = {instancePath:instancePath+"/entity",schemaPath:"#/properties/entity/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err24];
}
else {
vErrors.push(err24);
}
errors++;
}
const len8 = data31.length;
for(let i8=0; i8<len8; i8++){
if(!(validate1079(data31[i8], {instancePath:instancePath+"/entity/" + i8,parentData:data31,parentDataProperty:i8,rootData}))){
vErrors = vErrors === null ? validate1079.errors : vErrors.concat(validate1079.errors);
errors = vErrors.length;
}
}
}
else {
const err25 = {instancePath:instancePath+"/entity",schemaPath:"#/properties/entity/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err25];
}
else {
vErrors.push(err25);
}
errors++;
}
}
if(data.signature !== undefined){
let data33 = data.signature;
if(Array.isArray(data33)){
if(data33.length < 1){
const err26 = {instancePath:instancePath+"/signature",schemaPath:"#/properties/signature/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err26];
}
else {
vErrors.push(err26);
}
errors++;
}
const len9 = data33.length;
for(let i9=0; i9<len9; i9++){
if(!(validate275(data33[i9], {instancePath:instancePath+"/signature/" + i9,parentData:data33,parentDataProperty:i9,rootData}))){
vErrors = vErrors === null ? validate275.errors : vErrors.concat(validate275.errors);
errors = vErrors.length;
}
}
}
else {
const err27 = {instancePath:instancePath+"/signature",schemaPath:"#/properties/signature/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err27];
}
else {
vErrors.push(err27);
}
errors++;
}
}
let count0 = 0;
if(data["occurredPeriod"] !== undefined){
count0++;
}
if(data["occurredDateTime"] !== undefined){
count0++;
}
if(count0 > 1){
const err28 = {instancePath,schemaPath:"#/choices",keyword:"choices",params:{}};
if(vErrors === null){
vErrors = [err28];
}
else {
vErrors.push(err28);
}
errors++;
}
}
else {
const err29 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err29];
}
else {
vErrors.push(err29);
}
errors++;
}
validate1050.errors = vErrors;
return errors === 0;
}

const schema97 = {"type":"object","properties":{"resourceType":{"const":"Appointment"},"id":{"$ref":"#/definitions/id"},"meta":{"$ref":"#/definitions/Meta"},"implicitRules":{"$ref":"#/definitions/uri"},"_implicitRules":{"$ref":"#/definitions/Element"},"language":{"$ref":"#/definitions/code"},"_language":{"$ref":"#/definitions/Element"},"text":{"$ref":"#/definitions/Narrative"},"contained":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/ResourceList"}},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"identifier":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Identifier"}},"status":{"enum":["proposed","pending","booked","arrived","fulfilled","cancelled","noshow","entered-in-error","checked-in","waitlist"]},"_status":{"$ref":"#/definitions/Element"},"cancelationReason":{"$ref":"#/definitions/CodeableConcept"},"serviceCategory":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"serviceType":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"specialty":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"appointmentType":{"$ref":"#/definitions/CodeableConcept"},"reasonCode":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"reasonReference":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"priority":{"$ref":"#/definitions/unsignedInt"},"_priority":{"$ref":"#/definitions/Element"},"description":{"$ref":"#/definitions/string"},"_description":{"$ref":"#/definitions/Element"},"supportingInformation":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"start":{"$ref":"#/definitions/instant"},"_start":{"$ref":"#/definitions/Element"},"end":{"$ref":"#/definitions/instant"},"_end":{"$ref":"#/definitions/Element"},"minutesDuration":{"$ref":"#/definitions/positiveInt"},"_minutesDuration":{"$ref":"#/definitions/Element"},"slot":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"created":{"$ref":"#/definitions/dateTime"},"_created":{"$ref":"#/definitions/Element"},"comment":{"$ref":"#/definitions/string"},"_comment":{"$ref":"#/definitions/Element"},"patientInstruction":{"$ref":"#/definitions/string"},"_patientInstruction":{"$ref":"#/definitions/Element"},"basedOn":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"participant":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Appointment_Participant"}},"requestedPeriod":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Period"}}},"required":["participant","resourceType","status"],"additionalProperties":false};
const schema98 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"type":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"actor":{"$ref":"#/definitions/Reference"},"required":{"enum":["required","optional","information-only"]},"_required":{"$ref":"#/definitions/Element"},"status":{"enum":["accepted","declined","tentative","needs-action"]},"_status":{"$ref":"#/definitions/Element"},"period":{"$ref":"#/definitions/Period"}},"required":["status"],"additionalProperties":false};

function validate1126(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.status === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "status"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
for(const key0 in data){
if(!(func2.call(schema98.properties, key0))){
const err1 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err2 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(validate28(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err3 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.modifierExtension !== undefined){
let data3 = data.modifierExtension;
if(Array.isArray(data3)){
if(data3.length < 1){
const err4 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
const len1 = data3.length;
for(let i1=0; i1<len1; i1++){
if(!(validate28(data3[i1], {instancePath:instancePath+"/modifierExtension/" + i1,parentData:data3,parentDataProperty:i1,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err5 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
if(data.type !== undefined){
let data5 = data.type;
if(Array.isArray(data5)){
if(data5.length < 1){
const err6 = {instancePath:instancePath+"/type",schemaPath:"#/properties/type/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
const len2 = data5.length;
for(let i2=0; i2<len2; i2++){
if(!(validate106(data5[i2], {instancePath:instancePath+"/type/" + i2,parentData:data5,parentDataProperty:i2,rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
}
else {
const err7 = {instancePath:instancePath+"/type",schemaPath:"#/properties/type/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
}
if(data.actor !== undefined){
if(!(validate97(data.actor, {instancePath:instancePath+"/actor",parentData:data,parentDataProperty:"actor",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
if(data.required !== undefined){
let data8 = data.required;
if(!(((data8 === "required") || (data8 === "optional")) || (data8 === "information-only"))){
const err8 = {instancePath:instancePath+"/required",schemaPath:"#/properties/required/enum",keyword:"enum",params:{allowedValues: schema98.properties.required.enum}};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
}
if(data._required !== undefined){
if(!(validate32(data._required, {instancePath:instancePath+"/_required",parentData:data,parentDataProperty:"_required",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.status !== undefined){
let data10 = data.status;
if(!((((data10 === "accepted") || (data10 === "declined")) || (data10 === "tentative")) || (data10 === "needs-action"))){
const err9 = {instancePath:instancePath+"/status",schemaPath:"#/properties/status/enum",keyword:"enum",params:{allowedValues: schema98.properties.status.enum}};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
}
if(data._status !== undefined){
if(!(validate32(data._status, {instancePath:instancePath+"/_status",parentData:data,parentDataProperty:"_status",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.period !== undefined){
if(!(validate72(data.period, {instancePath:instancePath+"/period",parentData:data,parentDataProperty:"period",rootData}))){
vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
errors = vErrors.length;
}
}
}
else {
const err10 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err10];
}
else {
vErrors.push(err10);
}
errors++;
}
validate1126.errors = vErrors;
return errors === 0;
}


function validate1088(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.participant === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "participant"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.resourceType === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "resourceType"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(data.status === undefined){
const err2 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "status"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
for(const key0 in data){
if(!(func2.call(schema97.properties, key0))){
const err3 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.resourceType !== undefined){
if("Appointment" !== data.resourceType){
const err4 = {instancePath:instancePath+"/resourceType",schemaPath:"#/properties/resourceType/const",keyword:"const",params:{allowedValue: "Appointment"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate23(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate23.errors : vErrors.concat(validate23.errors);
errors = vErrors.length;
}
}
if(data.meta !== undefined){
if(!(validate25(data.meta, {instancePath:instancePath+"/meta",parentData:data,parentDataProperty:"meta",rootData}))){
vErrors = vErrors === null ? validate25.errors : vErrors.concat(validate25.errors);
errors = vErrors.length;
}
}
if(data.implicitRules !== undefined){
if(!(validate30(data.implicitRules, {instancePath:instancePath+"/implicitRules",parentData:data,parentDataProperty:"implicitRules",rootData}))){
vErrors = vErrors === null ? validate30.errors : vErrors.concat(validate30.errors);
errors = vErrors.length;
}
}
if(data._implicitRules !== undefined){
if(!(validate32(data._implicitRules, {instancePath:instancePath+"/_implicitRules",parentData:data,parentDataProperty:"_implicitRules",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.language !== undefined){
if(!(validate91(data.language, {instancePath:instancePath+"/language",parentData:data,parentDataProperty:"language",rootData}))){
vErrors = vErrors === null ? validate91.errors : vErrors.concat(validate91.errors);
errors = vErrors.length;
}
}
if(data._language !== undefined){
if(!(validate32(data._language, {instancePath:instancePath+"/_language",parentData:data,parentDataProperty:"_language",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.text !== undefined){
if(!(validate511(data.text, {instancePath:instancePath+"/text",parentData:data,parentDataProperty:"text",rootData}))){
vErrors = vErrors === null ? validate511.errors : vErrors.concat(validate511.errors);
errors = vErrors.length;
}
}
if(data.contained !== undefined){
let data8 = data.contained;
if(Array.isArray(data8)){
if(data8.length < 1){
const err5 = {instancePath:instancePath+"/contained",schemaPath:"#/properties/contained/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
const len0 = data8.length;
for(let i0=0; i0<len0; i0++){
if(!(wrapper40.validate(data8[i0], {instancePath:instancePath+"/contained/" + i0,parentData:data8,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? wrapper40.validate.errors : vErrors.concat(wrapper40.validate.errors);
errors = vErrors.length;
}
}
}
else {
const err6 = {instancePath:instancePath+"/contained",schemaPath:"#/properties/contained/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
if(data.extension !== undefined){
let data10 = data.extension;
if(Array.isArray(data10)){
if(data10.length < 1){
const err7 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
const len1 = data10.length;
for(let i1=0; i1<len1; i1++){
if(!(validate28(data10[i1], {instancePath:instancePath+"/extension/" + i1,parentData:data10,parentDataProperty:i1,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err8 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
}
if(data.modifierExtension !== undefined){
let data12 = data.modifierExtension;
if(Array.isArray(data12)){
if(data12.length < 1){
const err9 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
const len2 = data12.length;
for(let i2=0; i2<len2; i2++){
if(!(validate28(data12[i2], {instancePath:instancePath+"/modifierExtension/" + i2,parentData:data12,parentDataProperty:i2,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err10 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err10];
}
else {
vErrors.push(err10);
}
errors++;
}
}
if(data.identifier !== undefined){
let data14 = data.identifier;
if(Array.isArray(data14)){
if(data14.length < 1){
const err11 = {instancePath:instancePath+"/identifier",schemaPath:"#/properties/identifier/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err11];
}
else {
vErrors.push(err11);
}
errors++;
}
const len3 = data14.length;
for(let i3=0; i3<len3; i3++){
if(!(validate103(data14[i3], {instancePath:instancePath+"/identifier/" + i3,parentData:data14,parentDataProperty:i3,rootData}))){
vErrors = vErrors === null ? validate103.errors : vErrors.concat(validate103.errors);
errors = vErrors.length;
}
}
}
else {
const err12 = {instancePath:instancePath+"/identifier",schemaPath:"#/properties/identifier/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err12];
}
else {
vErrors.push(err12);
}
errors++;
}
}
if(data.status !== undefined){
let data16 = data.status;
if(!((((((((((data16 === "proposed") || (data16 === "pending")) || (data16 === "booked")) || (data16 === "arrived")) || (data16 === "fulfilled")) || (data16 === "cancelled")) || (data16 === "noshow")) || (data16 === "entered-in-error")) || (data16 === "checked-in")) || (data16 === "waitlist"))){
const err13 = {instancePath:instancePath+"/status",schemaPath:"#/properties/status/enum",keyword:"enum",params:{allowedValues: schema97.properties.status.enum}};
if(vErrors === null){
vErrors = [err13];
}
else {
vErrors.push(err13);
}
errors++;
}
}
if(data._status !== undefined){
if(!(validate32(data._status, {instancePath:instancePath+"/_status",parentData:data,parentDataProperty:"_status",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.cancelationReason !== undefined){
if(!(validate106(data.cancelationReason, {instancePath:instancePath+"/cancelationReason",parentData:data,parentDataProperty:"cancelationReason",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.serviceCategory !== undefined){
let data19 = data.serviceCategory;
if(Array.isArray(data19)){
if(data19.length < 1){
const err14 = {instancePath:instancePath+"/serviceCategory",schemaPath:"#/properties/serviceCategory/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err14];
}
else {
vErrors.push(err14);
}
errors++;
}
const len4 = data19.length;
for(let i4=0; i4<len4; i4++){
if(!(validate106(data19[i4], {instancePath:instancePath+"/serviceCategory/" + i4,parentData:data19,parentDataProperty:i4,rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
}
else {
const err15 = {instancePath:instancePath+"/serviceCategory",schemaPath:"#/properties/serviceCategory/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err15];
}
else {
vErrors.push(err15);
}
errors++;
}
}
if(data.serviceType !== undefined){
let data21 = data.serviceType;
if(Array.isArray(data21)){
if(data21.length < 1){
const err16 = {instancePath:instancePath+"/serviceType",schemaPath:"#/properties/serviceType/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err16];
}
else {
vErrors.push(err16);
}
errors++;
}
const len5 = data21.length;
for(let i5=0; i5<len5; i5++){
if(!(validate106(data21[i5], {instancePath:instancePath+"/serviceType/" + i5,parentData:data21,parentDataProperty:i5,rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
}
else {
const err17 = {instancePath:instancePath+"/serviceType",schemaPath:"#/properties/serviceType/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err17];
}
else {
vErrors.push(err17);
}
errors++;
}
}
if(data.specialty !== undefined){
let data23 = data.specialty;
if(Array.isArray(data23)){
if(data23.length < 1){
const err18 = {instancePath:instancePath+"/specialty",schemaPath:"#/properties/specialty/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err18];
}
else {
vErrors.push(err18);
}
errors++;
}
const len6 = data23.length;
for(let i6=0; i6<len6; i6++){
if(!(validate106(data23[i6], {instancePath:instancePath+"/specialty/" + i6,parentData:data23,parentDataProperty:i6,rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
}
else {
const err19 = {instancePath:instancePath+"/specialty",schemaPath:"#/properties/specialty/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err19];
}
else {
vErrors.push(err19);
}
errors++;
}
}
if(data.appointmentType !== undefined){
if(!(validate106(data.appointmentType, {instancePath:instancePath+"/appointmentType",parentData:data,parentDataProperty:"appointmentType",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.reasonCode !== undefined){
let data26 = data.reasonCode;
if(Array.isArray(data26)){
if(data26.length < 1){
const err20 = {instancePath:instancePath+"/reasonCode",schemaPath:"#/properties/reasonCode/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err20];
}
else {
vErrors.push(err20);
}
errors++;
}
const len7 = data26.length;
for(let i7=0; i7<len7; i7++){
if(!(validate106(data26[i7], {instancePath:instancePath+"/reasonCode/" + i7,parentData:data26,parentDataProperty:i7,rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
}
else {
const err21 = {instancePath:instancePath+"/reasonCode",schemaPath:"#/properties/reasonCode/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err21];
}
else {
vErrors.push(err21);
}
errors++;
}
}
if(data.reasonReference !== undefined){
let data28 = data.reasonReference;
if(Array.isArray(data28)){
if(data28.length < 1){
const err22 = {instancePath:instancePath+"/reasonReference",schemaPath:"#/properties/reasonReference/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err22];
}
else {
vErrors.push(err22);
}
errors++;
}
const len8 = data28.length;
for(let i8=0; i8<len8; i8++){
if(!(validate97(data28[i8], {instancePath:instancePath+"/reasonReference/" + i8,parentData:data28,parentDataProperty:i8,rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
}
else {
const err23 = {instancePath:instancePath+"/reasonReference",schemaPath:"#/properties/reasonReference/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err23];
}
else {
vErrors.push(err23);
}
errors++;
}
}
if(data.priority !== undefined){
if(!(validate153(data.priority, {instancePath:instancePath+"/priority",parentData:data,parentDataProperty:"priority",rootData}))){
vErrors = vErrors === null ? validate153.errors : vErrors.concat(validate153.errors);
errors = vErrors.length;
}
}
if(data._priority !== undefined){
if(!(validate32(data._priority, {instancePath:instancePath+"/_priority",parentData:data,parentDataProperty:"_priority",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.description !== undefined){
if(!(validate26(data.description, {instancePath:instancePath+"/description",parentData:data,parentDataProperty:"description",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._description !== undefined){
if(!(validate32(data._description, {instancePath:instancePath+"/_description",parentData:data,parentDataProperty:"_description",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.supportingInformation !== undefined){
let data34 = data.supportingInformation;
if(Array.isArray(data34)){
if(data34.length < 1){
const err24 = {instancePath:instancePath+"/supportingInformation",schemaPath:"#/properties/supportingInformation/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err24];
}
else {
vErrors.push(err24);
}
errors++;
}
const len9 = data34.length;
for(let i9=0; i9<len9; i9++){
if(!(validate97(data34[i9], {instancePath:instancePath+"/supportingInformation/" + i9,parentData:data34,parentDataProperty:i9,rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
}
else {
const err25 = {instancePath:instancePath+"/supportingInformation",schemaPath:"#/properties/supportingInformation/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err25];
}
else {
vErrors.push(err25);
}
errors++;
}
}
if(data.start !== undefined){
if(!(validate278(data.start, {instancePath:instancePath+"/start",parentData:data,parentDataProperty:"start",rootData}))){
vErrors = vErrors === null ? validate278.errors : vErrors.concat(validate278.errors);
errors = vErrors.length;
}
}
if(data._start !== undefined){
if(!(validate32(data._start, {instancePath:instancePath+"/_start",parentData:data,parentDataProperty:"_start",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.end !== undefined){
if(!(validate278(data.end, {instancePath:instancePath+"/end",parentData:data,parentDataProperty:"end",rootData}))){
vErrors = vErrors === null ? validate278.errors : vErrors.concat(validate278.errors);
errors = vErrors.length;
}
}
if(data._end !== undefined){
if(!(validate32(data._end, {instancePath:instancePath+"/_end",parentData:data,parentDataProperty:"_end",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.minutesDuration !== undefined){
if(!(validate171(data.minutesDuration, {instancePath:instancePath+"/minutesDuration",parentData:data,parentDataProperty:"minutesDuration",rootData}))){
vErrors = vErrors === null ? validate171.errors : vErrors.concat(validate171.errors);
errors = vErrors.length;
}
}
if(data._minutesDuration !== undefined){
if(!(validate32(data._minutesDuration, {instancePath:instancePath+"/_minutesDuration",parentData:data,parentDataProperty:"_minutesDuration",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.slot !== undefined){
let data42 = data.slot;
if(Array.isArray(data42)){
if(data42.length < 1){
const err26 = {instancePath:instancePath+"/slot",schemaPath:"#/properties/slot/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err26];
}
else {
vErrors.push(err26);
}
errors++;
}
const len10 = data42.length;
for(let i10=0; i10<len10; i10++){
if(!(validate97(data42[i10], {instancePath:instancePath+"/slot/" + i10,parentData:data42,parentDataProperty:i10,rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
}
else {
const err27 = {instancePath:instancePath+"/slot",schemaPath:"#/properties/slot/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err27];
}
else {
vErrors.push(err27);
}
errors++;
}
}
if(data.created !== undefined){
if(!(validate74(data.created, {instancePath:instancePath+"/created",parentData:data,parentDataProperty:"created",rootData}))){
vErrors = vErrors === null ? validate74.errors : vErrors.concat(validate74.errors);
errors = vErrors.length;
}
}
if(data._created !== undefined){
if(!(validate32(data._created, {instancePath:instancePath+"/_created",parentData:data,parentDataProperty:"_created",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.comment !== undefined){
if(!(validate26(data.comment, {instancePath:instancePath+"/comment",parentData:data,parentDataProperty:"comment",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._comment !== undefined){
if(!(validate32(data._comment, {instancePath:instancePath+"/_comment",parentData:data,parentDataProperty:"_comment",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.patientInstruction !== undefined){
if(!(validate26(data.patientInstruction, {instancePath:instancePath+"/patientInstruction",parentData:data,parentDataProperty:"patientInstruction",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._patientInstruction !== undefined){
if(!(validate32(data._patientInstruction, {instancePath:instancePath+"/_patientInstruction",parentData:data,parentDataProperty:"_patientInstruction",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.basedOn !== undefined){
let data50 = data.basedOn;
if(Array.isArray(data50)){
if(data50.length < 1){
const err28 = {instancePath:instancePath+"/basedOn",schemaPath:"#/properties/basedOn/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err28];
}
else {
vErrors.push(err28);
}
errors++;
}
const len11 = data50.length;
for(let i11=0; i11<len11; i11++){
if(!(validate97(data50[i11], {instancePath:instancePath+"/basedOn/" + i11,parentData:data50,parentDataProperty:i11,rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
}
else {
const err29 = {instancePath:instancePath+"/basedOn",schemaPath:"#/properties/basedOn/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err29];
}
else {
vErrors.push(err29);
}
errors++;
}
}
if(data.participant !== undefined){
let data52 = data.participant;
if(Array.isArray(data52)){
if(data52.length < 1){
const err30 = {instancePath:instancePath+"/participant",schemaPath:"#/properties/participant/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err30];
}
else {
vErrors.push(err30);
}
errors++;
}
const len12 = data52.length;
for(let i12=0; i12<len12; i12++){
if(!(validate1126(data52[i12], {instancePath:instancePath+"/participant/" + i12,parentData:data52,parentDataProperty:i12,rootData}))){
vErrors = vErrors === null ? validate1126.errors : vErrors.concat(validate1126.errors);
errors = vErrors.length;
}
}
}
else {
const err31 = {instancePath:instancePath+"/participant",schemaPath:"#/properties/participant/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err31];
}
else {
vErrors.push(err31);
}
errors++;
}
}
if(data.requestedPeriod !== undefined){
let data54 = data.requestedPeriod;
if(Array.isArray(data54)){
if(data54.length < 1){
const err32 = {instancePath:instancePath+"/requestedPeriod",schemaPath:"#/properties/requestedPeriod/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err32];
}
else {
vErrors.push(err32);
}
errors++;
}
const len13 = data54.length;
for(let i13=0; i13<len13; i13++){
if(!(validate72(data54[i13], {instancePath:instancePath+"/requestedPeriod/" + i13,parentData:data54,parentDataProperty:i13,rootData}))){
vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
errors = vErrors.length;
}
}
}
else {
const err33 = {instancePath:instancePath+"/requestedPeriod",schemaPath:"#/properties/requestedPeriod/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err33];
}
else {
vErrors.push(err33);
}
errors++;
}
}
}
else {
const err34 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err34];
}
else {
vErrors.push(err34);
}
errors++;
}
validate1088.errors = vErrors;
return errors === 0;
}

const schema99 = {"type":"object","properties":{"resourceType":{"const":"Task"},"id":{"$ref":"#/definitions/id"},"meta":{"$ref":"#/definitions/Meta"},"implicitRules":{"$ref":"#/definitions/uri"},"_implicitRules":{"$ref":"#/definitions/Element"},"language":{"$ref":"#/definitions/code"},"_language":{"$ref":"#/definitions/Element"},"text":{"$ref":"#/definitions/Narrative"},"contained":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/ResourceList"}},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"identifier":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Identifier"}},"instantiatesCanonical":{"$ref":"#/definitions/canonical"},"instantiatesUri":{"$ref":"#/definitions/uri"},"_instantiatesUri":{"$ref":"#/definitions/Element"},"basedOn":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"groupIdentifier":{"$ref":"#/definitions/Identifier"},"partOf":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"status":{"enum":["draft","requested","received","accepted","rejected","ready","cancelled","in-progress","on-hold","failed","completed","entered-in-error"]},"_status":{"$ref":"#/definitions/Element"},"statusReason":{"$ref":"#/definitions/CodeableConcept"},"businessStatus":{"$ref":"#/definitions/CodeableConcept"},"intent":{"enum":["unknown","proposal","plan","order","original-order","reflex-order","filler-order","instance-order","option"]},"_intent":{"$ref":"#/definitions/Element"},"priority":{"enum":["routine","urgent","asap","stat"]},"_priority":{"$ref":"#/definitions/Element"},"code":{"$ref":"#/definitions/CodeableConcept"},"description":{"$ref":"#/definitions/string"},"_description":{"$ref":"#/definitions/Element"},"focus":{"$ref":"#/definitions/Reference"},"for":{"$ref":"#/definitions/Reference"},"encounter":{"$ref":"#/definitions/Reference"},"executionPeriod":{"$ref":"#/definitions/Period"},"authoredOn":{"$ref":"#/definitions/dateTime"},"_authoredOn":{"$ref":"#/definitions/Element"},"lastModified":{"$ref":"#/definitions/dateTime"},"_lastModified":{"$ref":"#/definitions/Element"},"requester":{"$ref":"#/definitions/Reference"},"performerType":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/CodeableConcept"}},"owner":{"$ref":"#/definitions/Reference"},"location":{"$ref":"#/definitions/Reference"},"reasonCode":{"$ref":"#/definitions/CodeableConcept"},"reasonReference":{"$ref":"#/definitions/Reference"},"insurance":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"note":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Annotation"}},"relevantHistory":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}},"restriction":{"$ref":"#/definitions/Task_Restriction"},"input":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Task_Input"}},"output":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Task_Output"}}},"required":["intent","resourceType","status"],"additionalProperties":false};
const schema100 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"repetitions":{"$ref":"#/definitions/positiveInt"},"_repetitions":{"$ref":"#/definitions/Element"},"period":{"$ref":"#/definitions/Period"},"recipient":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Reference"}}},"additionalProperties":false};

function validate1179(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
for(const key0 in data){
if(!(((((((key0 === "id") || (key0 === "extension")) || (key0 === "modifierExtension")) || (key0 === "repetitions")) || (key0 === "_repetitions")) || (key0 === "period")) || (key0 === "recipient"))){
const err0 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err1 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(validate28(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err2 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.modifierExtension !== undefined){
let data3 = data.modifierExtension;
if(Array.isArray(data3)){
if(data3.length < 1){
const err3 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
const len1 = data3.length;
for(let i1=0; i1<len1; i1++){
if(!(validate28(data3[i1], {instancePath:instancePath+"/modifierExtension/" + i1,parentData:data3,parentDataProperty:i1,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err4 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.repetitions !== undefined){
if(!(validate171(data.repetitions, {instancePath:instancePath+"/repetitions",parentData:data,parentDataProperty:"repetitions",rootData}))){
vErrors = vErrors === null ? validate171.errors : vErrors.concat(validate171.errors);
errors = vErrors.length;
}
}
if(data._repetitions !== undefined){
if(!(validate32(data._repetitions, {instancePath:instancePath+"/_repetitions",parentData:data,parentDataProperty:"_repetitions",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.period !== undefined){
if(!(validate72(data.period, {instancePath:instancePath+"/period",parentData:data,parentDataProperty:"period",rootData}))){
vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
errors = vErrors.length;
}
}
if(data.recipient !== undefined){
let data8 = data.recipient;
if(Array.isArray(data8)){
if(data8.length < 1){
const err5 = {instancePath:instancePath+"/recipient",schemaPath:"#/properties/recipient/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
const len2 = data8.length;
for(let i2=0; i2<len2; i2++){
if(!(validate97(data8[i2], {instancePath:instancePath+"/recipient/" + i2,parentData:data8,parentDataProperty:i2,rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
}
else {
const err6 = {instancePath:instancePath+"/recipient",schemaPath:"#/properties/recipient/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
}
else {
const err7 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
validate1179.errors = vErrors;
return errors === 0;
}

const schema101 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"type":{"$ref":"#/definitions/CodeableConcept"},"valueBase64Binary":{"type":"string","pattern":"^(\\s*([0-9a-zA-Z\\+/=]){4}\\s*)+$"},"_valueBase64Binary":{"$ref":"#/definitions/Element"},"valueBoolean":{"type":"boolean"},"_valueBoolean":{"$ref":"#/definitions/Element"},"valueCanonical":{"type":"string","pattern":"^\\S*$"},"_valueCanonical":{"$ref":"#/definitions/Element"},"valueCode":{"type":"string","pattern":"^[^\\s]+(\\s[^\\s]+)*$"},"_valueCode":{"$ref":"#/definitions/Element"},"valueDate":{"type":"string","pattern":"^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1]))?)?$"},"_valueDate":{"$ref":"#/definitions/Element"},"valueDateTime":{"type":"string","pattern":"^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1])(T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00)))?)?)?$"},"_valueDateTime":{"$ref":"#/definitions/Element"},"valueDecimal":{"type":"number"},"_valueDecimal":{"$ref":"#/definitions/Element"},"valueId":{"type":"string","pattern":"^[A-Za-z0-9\\-\\.]{1,64}$"},"_valueId":{"$ref":"#/definitions/Element"},"valueInstant":{"type":"string","pattern":"^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)-(0[1-9]|1[0-2])-(0[1-9]|[1-2][0-9]|3[0-1])T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00))$"},"_valueInstant":{"$ref":"#/definitions/Element"},"valueInteger":{"type":"number"},"_valueInteger":{"$ref":"#/definitions/Element"},"valueMarkdown":{"type":"string","pattern":"^[ \\r\\n\\t\\S]+$"},"_valueMarkdown":{"$ref":"#/definitions/Element"},"valueOid":{"type":"string","pattern":"^urn:oid:[0-2](\\.(0|[1-9][0-9]*))+$"},"_valueOid":{"$ref":"#/definitions/Element"},"valuePositiveInt":{"type":"number"},"_valuePositiveInt":{"$ref":"#/definitions/Element"},"valueString":{"type":"string","pattern":"^[ \\r\\n\\t\\S]+$"},"_valueString":{"$ref":"#/definitions/Element"},"valueTime":{"type":"string","pattern":"^([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?$"},"_valueTime":{"$ref":"#/definitions/Element"},"valueUnsignedInt":{"type":"number"},"_valueUnsignedInt":{"$ref":"#/definitions/Element"},"valueUri":{"type":"string","pattern":"^\\S*$"},"_valueUri":{"$ref":"#/definitions/Element"},"valueUrl":{"type":"string","pattern":"^\\S*$"},"_valueUrl":{"$ref":"#/definitions/Element"},"valueUuid":{"type":"string","pattern":"^urn:uuid:[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$"},"_valueUuid":{"$ref":"#/definitions/Element"},"valueAddress":{"$ref":"#/definitions/Address"},"valueAge":{"$ref":"#/definitions/Age"},"valueAnnotation":{"$ref":"#/definitions/Annotation"},"valueAttachment":{"$ref":"#/definitions/Attachment"},"valueCodeableConcept":{"$ref":"#/definitions/CodeableConcept"},"valueCoding":{"$ref":"#/definitions/Coding"},"valueContactPoint":{"$ref":"#/definitions/ContactPoint"},"valueCount":{"$ref":"#/definitions/Count"},"valueDistance":{"$ref":"#/definitions/Distance"},"valueDuration":{"$ref":"#/definitions/Duration"},"valueHumanName":{"$ref":"#/definitions/HumanName"},"valueIdentifier":{"$ref":"#/definitions/Identifier"},"valueMoney":{"$ref":"#/definitions/Money"},"valuePeriod":{"$ref":"#/definitions/Period"},"valueQuantity":{"$ref":"#/definitions/Quantity"},"valueRange":{"$ref":"#/definitions/Range"},"valueRatio":{"$ref":"#/definitions/Ratio"},"valueReference":{"$ref":"#/definitions/Reference"},"valueSampledData":{"$ref":"#/definitions/SampledData"},"valueSignature":{"$ref":"#/definitions/Signature"},"valueTiming":{"$ref":"#/definitions/Timing"},"valueContactDetail":{"$ref":"#/definitions/ContactDetail"},"valueContributor":{"$ref":"#/definitions/Contributor"},"valueDataRequirement":{"$ref":"#/definitions/DataRequirement"},"valueExpression":{"$ref":"#/definitions/Expression"},"valueParameterDefinition":{"$ref":"#/definitions/ParameterDefinition"},"valueRelatedArtifact":{"$ref":"#/definitions/RelatedArtifact"},"valueTriggerDefinition":{"$ref":"#/definitions/TriggerDefinition"},"valueUsageContext":{"$ref":"#/definitions/UsageContext"},"valueDosage":{"$ref":"#/definitions/Dosage"}},"required":["type"],"choices":[{"element":"value[x]","properties":["valueBase64Binary","valueBoolean","valueCanonical","valueCode","valueDate","valueDateTime","valueDecimal","valueId","valueInstant","valueInteger","valueMarkdown","valueOid","valuePositiveInt","valueString","valueTime","valueUnsignedInt","valueUri","valueUrl","valueUuid","valueAddress","valueAge","valueAnnotation","valueAttachment","valueCodeableConcept","valueCoding","valueContactPoint","valueCount","valueDistance","valueDuration","valueHumanName","valueIdentifier","valueMoney","valuePeriod","valueQuantity","valueRange","valueRatio","valueReference","valueSampledData","valueSignature","valueTiming","valueContactDetail","valueContributor","valueDataRequirement","valueExpression","valueParameterDefinition","valueRelatedArtifact","valueTriggerDefinition","valueUsageContext","valueDosage"],"required":true}],"additionalProperties":false};

function validate1188(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.type === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "type"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
for(const key0 in data){
if(!(func2.call(schema101.properties, key0))){
const err1 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err2 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(validate28(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err3 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.modifierExtension !== undefined){
let data3 = data.modifierExtension;
if(Array.isArray(data3)){
if(data3.length < 1){
const err4 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
const len1 = data3.length;
for(let i1=0; i1<len1; i1++){
if(!(validate28(data3[i1], {instancePath:instancePath+"/modifierExtension/" + i1,parentData:data3,parentDataProperty:i1,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err5 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
if(data.type !== undefined){
if(!(validate106(data.type, {instancePath:instancePath+"/type",parentData:data,parentDataProperty:"type",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.valueBase64Binary !== undefined){
let data6 = data.valueBase64Binary;
if(typeof data6 === "string"){
if(!pattern3.test(data6)){
const err6 = {instancePath:instancePath+"/valueBase64Binary",schemaPath:"#/properties/valueBase64Binary/pattern",keyword:"pattern",params:{pattern: "^(\\s*([0-9a-zA-Z\\+/=]){4}\\s*)+$"}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
else {
const err7 = {instancePath:instancePath+"/valueBase64Binary",schemaPath:"#/properties/valueBase64Binary/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
}
if(data._valueBase64Binary !== undefined){
if(!(validate32(data._valueBase64Binary, {instancePath:instancePath+"/_valueBase64Binary",parentData:data,parentDataProperty:"_valueBase64Binary",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueBoolean !== undefined){
if(typeof data.valueBoolean !== "boolean"){
const err8 = {instancePath:instancePath+"/valueBoolean",schemaPath:"#/properties/valueBoolean/type",keyword:"type",params:{type: "boolean"}};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
}
if(data._valueBoolean !== undefined){
if(!(validate32(data._valueBoolean, {instancePath:instancePath+"/_valueBoolean",parentData:data,parentDataProperty:"_valueBoolean",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueCanonical !== undefined){
let data10 = data.valueCanonical;
if(typeof data10 === "string"){
if(!pattern2.test(data10)){
const err9 = {instancePath:instancePath+"/valueCanonical",schemaPath:"#/properties/valueCanonical/pattern",keyword:"pattern",params:{pattern: "^\\S*$"}};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
}
else {
const err10 = {instancePath:instancePath+"/valueCanonical",schemaPath:"#/properties/valueCanonical/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err10];
}
else {
vErrors.push(err10);
}
errors++;
}
}
if(data._valueCanonical !== undefined){
if(!(validate32(data._valueCanonical, {instancePath:instancePath+"/_valueCanonical",parentData:data,parentDataProperty:"_valueCanonical",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueCode !== undefined){
let data12 = data.valueCode;
if(typeof data12 === "string"){
if(!pattern5.test(data12)){
const err11 = {instancePath:instancePath+"/valueCode",schemaPath:"#/properties/valueCode/pattern",keyword:"pattern",params:{pattern: "^[^\\s]+(\\s[^\\s]+)*$"}};
if(vErrors === null){
vErrors = [err11];
}
else {
vErrors.push(err11);
}
errors++;
}
}
else {
const err12 = {instancePath:instancePath+"/valueCode",schemaPath:"#/properties/valueCode/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err12];
}
else {
vErrors.push(err12);
}
errors++;
}
}
if(data._valueCode !== undefined){
if(!(validate32(data._valueCode, {instancePath:instancePath+"/_valueCode",parentData:data,parentDataProperty:"_valueCode",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueDate !== undefined){
let data14 = data.valueDate;
if(typeof data14 === "string"){
if(!pattern6.test(data14)){
const err13 = {instancePath:instancePath+"/valueDate",schemaPath:"#/properties/valueDate/pattern",keyword:"pattern",params:{pattern: "^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1]))?)?$"}};
if(vErrors === null){
vErrors = [err13];
}
else {
vErrors.push(err13);
}
errors++;
}
}
else {
const err14 = {instancePath:instancePath+"/valueDate",schemaPath:"#/properties/valueDate/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err14];
}
else {
vErrors.push(err14);
}
errors++;
}
}
if(data._valueDate !== undefined){
if(!(validate32(data._valueDate, {instancePath:instancePath+"/_valueDate",parentData:data,parentDataProperty:"_valueDate",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueDateTime !== undefined){
let data16 = data.valueDateTime;
if(typeof data16 === "string"){
if(!pattern7.test(data16)){
const err15 = {instancePath:instancePath+"/valueDateTime",schemaPath:"#/properties/valueDateTime/pattern",keyword:"pattern",params:{pattern: "^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1])(T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00)))?)?)?$"}};
if(vErrors === null){
vErrors = [err15];
}
else {
vErrors.push(err15);
}
errors++;
}
}
else {
const err16 = {instancePath:instancePath+"/valueDateTime",schemaPath:"#/properties/valueDateTime/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err16];
}
else {
vErrors.push(err16);
}
errors++;
}
}
if(data._valueDateTime !== undefined){
if(!(validate32(data._valueDateTime, {instancePath:instancePath+"/_valueDateTime",parentData:data,parentDataProperty:"_valueDateTime",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueDecimal !== undefined){
let data18 = data.valueDecimal;
if(!((typeof data18 == "number") && (isFinite(data18)))){
const err17 = {instancePath:instancePath+"/valueDecimal",schemaPath:"#/properties/valueDecimal/type",keyword:"type",params:{type: "number"}};
if(vErrors === null){
vErrors = [err17];
}
else {
vErrors.push(err17);
}
errors++;
}
}
if(data._valueDecimal !== undefined){
if(!(validate32(data._valueDecimal, {instancePath:instancePath+"/_valueDecimal",parentData:data,parentDataProperty:"_valueDecimal",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueId !== undefined){
let data20 = data.valueId;
if(typeof data20 === "string"){
if(!pattern0.test(data20)){
const err18 = {instancePath:instancePath+"/valueId",schemaPath:"#/properties/valueId/pattern",keyword:"pattern",params:{pattern: "^[A-Za-z0-9\\-\\.]{1,64}$"}};
if(vErrors === null){
vErrors = [err18];
}
else {
vErrors.push(err18);
}
errors++;
}
}
else {
const err19 = {instancePath:instancePath+"/valueId",schemaPath:"#/properties/valueId/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err19];
}
else {
vErrors.push(err19);
}
errors++;
}
}
if(data._valueId !== undefined){
if(!(validate32(data._valueId, {instancePath:instancePath+"/_valueId",parentData:data,parentDataProperty:"_valueId",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueInstant !== undefined){
let data22 = data.valueInstant;
if(typeof data22 === "string"){
if(!pattern9.test(data22)){
const err20 = {instancePath:instancePath+"/valueInstant",schemaPath:"#/properties/valueInstant/pattern",keyword:"pattern",params:{pattern: "^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)-(0[1-9]|1[0-2])-(0[1-9]|[1-2][0-9]|3[0-1])T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00))$"}};
if(vErrors === null){
vErrors = [err20];
}
else {
vErrors.push(err20);
}
errors++;
}
}
else {
const err21 = {instancePath:instancePath+"/valueInstant",schemaPath:"#/properties/valueInstant/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err21];
}
else {
vErrors.push(err21);
}
errors++;
}
}
if(data._valueInstant !== undefined){
if(!(validate32(data._valueInstant, {instancePath:instancePath+"/_valueInstant",parentData:data,parentDataProperty:"_valueInstant",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueInteger !== undefined){
let data24 = data.valueInteger;
if(!((typeof data24 == "number") && (isFinite(data24)))){
const err22 = {instancePath:instancePath+"/valueInteger",schemaPath:"#/properties/valueInteger/type",keyword:"type",params:{type: "number"}};
if(vErrors === null){
vErrors = [err22];
}
else {
vErrors.push(err22);
}
errors++;
}
}
if(data._valueInteger !== undefined){
if(!(validate32(data._valueInteger, {instancePath:instancePath+"/_valueInteger",parentData:data,parentDataProperty:"_valueInteger",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueMarkdown !== undefined){
let data26 = data.valueMarkdown;
if(typeof data26 === "string"){
if(!pattern1.test(data26)){
const err23 = {instancePath:instancePath+"/valueMarkdown",schemaPath:"#/properties/valueMarkdown/pattern",keyword:"pattern",params:{pattern: "^[ \\r\\n\\t\\S]+$"}};
if(vErrors === null){
vErrors = [err23];
}
else {
vErrors.push(err23);
}
errors++;
}
}
else {
const err24 = {instancePath:instancePath+"/valueMarkdown",schemaPath:"#/properties/valueMarkdown/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err24];
}
else {
vErrors.push(err24);
}
errors++;
}
}
if(data._valueMarkdown !== undefined){
if(!(validate32(data._valueMarkdown, {instancePath:instancePath+"/_valueMarkdown",parentData:data,parentDataProperty:"_valueMarkdown",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueOid !== undefined){
let data28 = data.valueOid;
if(typeof data28 === "string"){
if(!pattern11.test(data28)){
const err25 = {instancePath:instancePath+"/valueOid",schemaPath:"#/properties/valueOid/pattern",keyword:"pattern",params:{pattern: "^urn:oid:[0-2](\\.(0|[1-9][0-9]*))+$"}};
if(vErrors === null){
vErrors = [err25];
}
else {
vErrors.push(err25);
}
errors++;
}
}
else {
const err26 = {instancePath:instancePath+"/valueOid",schemaPath:"#/properties/valueOid/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err26];
}
else {
vErrors.push(err26);
}
errors++;
}
}
if(data._valueOid !== undefined){
if(!(validate32(data._valueOid, {instancePath:instancePath+"/_valueOid",parentData:data,parentDataProperty:"_valueOid",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valuePositiveInt !== undefined){
let data30 = data.valuePositiveInt;
if(!((typeof data30 == "number") && (isFinite(data30)))){
const err27 = {instancePath:instancePath+"/valuePositiveInt",schemaPath:"#/properties/valuePositiveInt/type",keyword:"type",params:{type: "number"}};
if(vErrors === null){
vErrors = [err27];
}
else {
vErrors.push(err27);
}
errors++;
}
}
if(data._valuePositiveInt !== undefined){
if(!(validate32(data._valuePositiveInt, {instancePath:instancePath+"/_valuePositiveInt",parentData:data,parentDataProperty:"_valuePositiveInt",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueString !== undefined){
let data32 = data.valueString;
if(typeof data32 === "string"){
if(!pattern1.test(data32)){
const err28 = {instancePath:instancePath+"/valueString",schemaPath:"#/properties/valueString/pattern",keyword:"pattern",params:{pattern: "^[ \\r\\n\\t\\S]+$"}};
if(vErrors === null){
vErrors = [err28];
}
else {
vErrors.push(err28);
}
errors++;
}
}
else {
const err29 = {instancePath:instancePath+"/valueString",schemaPath:"#/properties/valueString/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err29];
}
else {
vErrors.push(err29);
}
errors++;
}
}
if(data._valueString !== undefined){
if(!(validate32(data._valueString, {instancePath:instancePath+"/_valueString",parentData:data,parentDataProperty:"_valueString",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueTime !== undefined){
let data34 = data.valueTime;
if(typeof data34 === "string"){
if(!pattern13.test(data34)){
const err30 = {instancePath:instancePath+"/valueTime",schemaPath:"#/properties/valueTime/pattern",keyword:"pattern",params:{pattern: "^([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?$"}};
if(vErrors === null){
vErrors = [err30];
}
else {
vErrors.push(err30);
}
errors++;
}
}
else {
const err31 = {instancePath:instancePath+"/valueTime",schemaPath:"#/properties/valueTime/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err31];
}
else {
vErrors.push(err31);
}
errors++;
}
}
if(data._valueTime !== undefined){
if(!(validate32(data._valueTime, {instancePath:instancePath+"/_valueTime",parentData:data,parentDataProperty:"_valueTime",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueUnsignedInt !== undefined){
let data36 = data.valueUnsignedInt;
if(!((typeof data36 == "number") && (isFinite(data36)))){
const err32 = {instancePath:instancePath+"/valueUnsignedInt",schemaPath:"#/properties/valueUnsignedInt/type",keyword:"type",params:{type: "number"}};
if(vErrors === null){
vErrors = [err32];
}
else {
vErrors.push(err32);
}
errors++;
}
}
if(data._valueUnsignedInt !== undefined){
if(!(validate32(data._valueUnsignedInt, {instancePath:instancePath+"/_valueUnsignedInt",parentData:data,parentDataProperty:"_valueUnsignedInt",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueUri !== undefined){
let data38 = data.valueUri;
if(typeof data38 === "string"){
if(!pattern2.test(data38)){
const err33 = {instancePath:instancePath+"/valueUri",schemaPath:"#/properties/valueUri/pattern",keyword:"pattern",params:{pattern: "^\\S*$"}};
if(vErrors === null){
vErrors = [err33];
}
else {
vErrors.push(err33);
}
errors++;
}
}
else {
const err34 = {instancePath:instancePath+"/valueUri",schemaPath:"#/properties/valueUri/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err34];
}
else {
vErrors.push(err34);
}
errors++;
}
}
if(data._valueUri !== undefined){
if(!(validate32(data._valueUri, {instancePath:instancePath+"/_valueUri",parentData:data,parentDataProperty:"_valueUri",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueUrl !== undefined){
let data40 = data.valueUrl;
if(typeof data40 === "string"){
if(!pattern2.test(data40)){
const err35 = {instancePath:instancePath+"/valueUrl",schemaPath:"#/properties/valueUrl/pattern",keyword:"pattern",params:{pattern: "^\\S*$"}};
if(vErrors === null){
vErrors = [err35];
}
else {
vErrors.push(err35);
}
errors++;
}
}
else {
const err36 = {instancePath:instancePath+"/valueUrl",schemaPath:"#/properties/valueUrl/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err36];
}
else {
vErrors.push(err36);
}
errors++;
}
}
if(data._valueUrl !== undefined){
if(!(validate32(data._valueUrl, {instancePath:instancePath+"/_valueUrl",parentData:data,parentDataProperty:"_valueUrl",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueUuid !== undefined){
let data42 = data.valueUuid;
if(typeof data42 === "string"){
if(!pattern16.test(data42)){
const err37 = {instancePath:instancePath+"/valueUuid",schemaPath:"#/properties/valueUuid/pattern",keyword:"pattern",params:{pattern: "^urn:uuid:[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$"}};
if(vErrors === null){
vErrors = [err37];
}
else {
vErrors.push(err37);
}
errors++;
}
}
else {
const err38 = {instancePath:instancePath+"/valueUuid",schemaPath:"#/properties/valueUuid/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err38];
}
else {
vErrors.push(err38);
}
errors++;
}
}
if(data._valueUuid !== undefined){
if(!(validate32(data._valueUuid, {instancePath:instancePath+"/_valueUuid",parentData:data,parentDataProperty:"_valueUuid",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueAddress !== undefined){
if(!(validate54(data.valueAddress, {instancePath:instancePath+"/valueAddress",parentData:data,parentDataProperty:"valueAddress",rootData}))){
vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
errors = vErrors.length;
}
}
if(data.valueAge !== undefined){
if(!(validate81(data.valueAge, {instancePath:instancePath+"/valueAge",parentData:data,parentDataProperty:"valueAge",rootData}))){
vErrors = vErrors === null ? validate81.errors : vErrors.concat(validate81.errors);
errors = vErrors.length;
}
}
if(data.valueAnnotation !== undefined){
if(!(validate95(data.valueAnnotation, {instancePath:instancePath+"/valueAnnotation",parentData:data,parentDataProperty:"valueAnnotation",rootData}))){
vErrors = vErrors === null ? validate95.errors : vErrors.concat(validate95.errors);
errors = vErrors.length;
}
}
if(data.valueAttachment !== undefined){
if(!(validate141(data.valueAttachment, {instancePath:instancePath+"/valueAttachment",parentData:data,parentDataProperty:"valueAttachment",rootData}))){
vErrors = vErrors === null ? validate141.errors : vErrors.concat(validate141.errors);
errors = vErrors.length;
}
}
if(data.valueCodeableConcept !== undefined){
if(!(validate106(data.valueCodeableConcept, {instancePath:instancePath+"/valueCodeableConcept",parentData:data,parentDataProperty:"valueCodeableConcept",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.valueCoding !== undefined){
if(!(validate108(data.valueCoding, {instancePath:instancePath+"/valueCoding",parentData:data,parentDataProperty:"valueCoding",rootData}))){
vErrors = vErrors === null ? validate108.errors : vErrors.concat(validate108.errors);
errors = vErrors.length;
}
}
if(data.valueContactPoint !== undefined){
if(!(validate165(data.valueContactPoint, {instancePath:instancePath+"/valueContactPoint",parentData:data,parentDataProperty:"valueContactPoint",rootData}))){
vErrors = vErrors === null ? validate165.errors : vErrors.concat(validate165.errors);
errors = vErrors.length;
}
}
if(data.valueCount !== undefined){
if(!(validate176(data.valueCount, {instancePath:instancePath+"/valueCount",parentData:data,parentDataProperty:"valueCount",rootData}))){
vErrors = vErrors === null ? validate176.errors : vErrors.concat(validate176.errors);
errors = vErrors.length;
}
}
if(data.valueDistance !== undefined){
if(!(validate188(data.valueDistance, {instancePath:instancePath+"/valueDistance",parentData:data,parentDataProperty:"valueDistance",rootData}))){
vErrors = vErrors === null ? validate188.errors : vErrors.concat(validate188.errors);
errors = vErrors.length;
}
}
if(data.valueDuration !== undefined){
if(!(validate200(data.valueDuration, {instancePath:instancePath+"/valueDuration",parentData:data,parentDataProperty:"valueDuration",rootData}))){
vErrors = vErrors === null ? validate200.errors : vErrors.concat(validate200.errors);
errors = vErrors.length;
}
}
if(data.valueHumanName !== undefined){
if(!(validate212(data.valueHumanName, {instancePath:instancePath+"/valueHumanName",parentData:data,parentDataProperty:"valueHumanName",rootData}))){
vErrors = vErrors === null ? validate212.errors : vErrors.concat(validate212.errors);
errors = vErrors.length;
}
}
if(data.valueIdentifier !== undefined){
if(!(validate103(data.valueIdentifier, {instancePath:instancePath+"/valueIdentifier",parentData:data,parentDataProperty:"valueIdentifier",rootData}))){
vErrors = vErrors === null ? validate103.errors : vErrors.concat(validate103.errors);
errors = vErrors.length;
}
}
if(data.valueMoney !== undefined){
if(!(validate228(data.valueMoney, {instancePath:instancePath+"/valueMoney",parentData:data,parentDataProperty:"valueMoney",rootData}))){
vErrors = vErrors === null ? validate228.errors : vErrors.concat(validate228.errors);
errors = vErrors.length;
}
}
if(data.valuePeriod !== undefined){
if(!(validate72(data.valuePeriod, {instancePath:instancePath+"/valuePeriod",parentData:data,parentDataProperty:"valuePeriod",rootData}))){
vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
errors = vErrors.length;
}
}
if(data.valueQuantity !== undefined){
if(!(validate236(data.valueQuantity, {instancePath:instancePath+"/valueQuantity",parentData:data,parentDataProperty:"valueQuantity",rootData}))){
vErrors = vErrors === null ? validate236.errors : vErrors.concat(validate236.errors);
errors = vErrors.length;
}
}
if(data.valueRange !== undefined){
if(!(validate248(data.valueRange, {instancePath:instancePath+"/valueRange",parentData:data,parentDataProperty:"valueRange",rootData}))){
vErrors = vErrors === null ? validate248.errors : vErrors.concat(validate248.errors);
errors = vErrors.length;
}
}
if(data.valueRatio !== undefined){
if(!(validate253(data.valueRatio, {instancePath:instancePath+"/valueRatio",parentData:data,parentDataProperty:"valueRatio",rootData}))){
vErrors = vErrors === null ? validate253.errors : vErrors.concat(validate253.errors);
errors = vErrors.length;
}
}
if(data.valueReference !== undefined){
if(!(validate97(data.valueReference, {instancePath:instancePath+"/valueReference",parentData:data,parentDataProperty:"valueReference",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
if(data.valueSampledData !== undefined){
if(!(validate259(data.valueSampledData, {instancePath:instancePath+"/valueSampledData",parentData:data,parentDataProperty:"valueSampledData",rootData}))){
vErrors = vErrors === null ? validate259.errors : vErrors.concat(validate259.errors);
errors = vErrors.length;
}
}
if(data.valueSignature !== undefined){
if(!(validate275(data.valueSignature, {instancePath:instancePath+"/valueSignature",parentData:data,parentDataProperty:"valueSignature",rootData}))){
vErrors = vErrors === null ? validate275.errors : vErrors.concat(validate275.errors);
errors = vErrors.length;
}
}
if(data.valueTiming !== undefined){
if(!(validate290(data.valueTiming, {instancePath:instancePath+"/valueTiming",parentData:data,parentDataProperty:"valueTiming",rootData}))){
vErrors = vErrors === null ? validate290.errors : vErrors.concat(validate290.errors);
errors = vErrors.length;
}
}
if(data.valueContactDetail !== undefined){
if(!(validate327(data.valueContactDetail, {instancePath:instancePath+"/valueContactDetail",parentData:data,parentDataProperty:"valueContactDetail",rootData}))){
vErrors = vErrors === null ? validate327.errors : vErrors.concat(validate327.errors);
errors = vErrors.length;
}
}
if(data.valueContributor !== undefined){
if(!(validate333(data.valueContributor, {instancePath:instancePath+"/valueContributor",parentData:data,parentDataProperty:"valueContributor",rootData}))){
vErrors = vErrors === null ? validate333.errors : vErrors.concat(validate333.errors);
errors = vErrors.length;
}
}
if(data.valueDataRequirement !== undefined){
if(!(validate340(data.valueDataRequirement, {instancePath:instancePath+"/valueDataRequirement",parentData:data,parentDataProperty:"valueDataRequirement",rootData}))){
vErrors = vErrors === null ? validate340.errors : vErrors.concat(validate340.errors);
errors = vErrors.length;
}
}
if(data.valueExpression !== undefined){
if(!(validate377(data.valueExpression, {instancePath:instancePath+"/valueExpression",parentData:data,parentDataProperty:"valueExpression",rootData}))){
vErrors = vErrors === null ? validate377.errors : vErrors.concat(validate377.errors);
errors = vErrors.length;
}
}
if(data.valueParameterDefinition !== undefined){
if(!(validate389(data.valueParameterDefinition, {instancePath:instancePath+"/valueParameterDefinition",parentData:data,parentDataProperty:"valueParameterDefinition",rootData}))){
vErrors = vErrors === null ? validate389.errors : vErrors.concat(validate389.errors);
errors = vErrors.length;
}
}
if(data.valueRelatedArtifact !== undefined){
if(!(validate404(data.valueRelatedArtifact, {instancePath:instancePath+"/valueRelatedArtifact",parentData:data,parentDataProperty:"valueRelatedArtifact",rootData}))){
vErrors = vErrors === null ? validate404.errors : vErrors.concat(validate404.errors);
errors = vErrors.length;
}
}
if(data.valueTriggerDefinition !== undefined){
if(!(validate418(data.valueTriggerDefinition, {instancePath:instancePath+"/valueTriggerDefinition",parentData:data,parentDataProperty:"valueTriggerDefinition",rootData}))){
vErrors = vErrors === null ? validate418.errors : vErrors.concat(validate418.errors);
errors = vErrors.length;
}
}
if(data.valueUsageContext !== undefined){
if(!(validate430(data.valueUsageContext, {instancePath:instancePath+"/valueUsageContext",parentData:data,parentDataProperty:"valueUsageContext",rootData}))){
vErrors = vErrors === null ? validate430.errors : vErrors.concat(validate430.errors);
errors = vErrors.length;
}
}
if(data.valueDosage !== undefined){
if(!(validate438(data.valueDosage, {instancePath:instancePath+"/valueDosage",parentData:data,parentDataProperty:"valueDosage",rootData}))){
vErrors = vErrors === null ? validate438.errors : vErrors.concat(validate438.errors);
errors = vErrors.length;
}
}
let count0 = 0;
if(data["valueBase64Binary"] !== undefined){
count0++;
}
if(data["valueBoolean"] !== undefined){
count0++;
}
if(data["valueCanonical"] !== undefined){
count0++;
}
if(data["valueCode"] !== undefined){
count0++;
}
if(data["valueDate"] !== undefined){
count0++;
}
if(data["valueDateTime"] !== undefined){
count0++;
}
if(data["valueDecimal"] !== undefined){
count0++;
}
if(data["valueId"] !== undefined){
count0++;
}
if(data["valueInstant"] !== undefined){
count0++;
}
if(data["valueInteger"] !== undefined){
count0++;
}
if(data["valueMarkdown"] !== undefined){
count0++;
}
if(data["valueOid"] !== undefined){
count0++;
}
if(data["valuePositiveInt"] !== undefined){
count0++;
}
if(data["valueString"] !== undefined){
count0++;
}
if(data["valueTime"] !== undefined){
count0++;
}
if(data["valueUnsignedInt"] !== undefined){
count0++;
}
if(data["valueUri"] !== undefined){
count0++;
}
if(data["valueUrl"] !== undefined){
count0++;
}
if(data["valueUuid"] !== undefined){
count0++;
}
if(data["valueAddress"] !== undefined){
count0++;
}
if(data["valueAge"] !== undefined){
count0++;
}
if(data["valueAnnotation"] !== undefined){
count0++;
}
if(data["valueAttachment"] !== undefined){
count0++;
}
if(data["valueCodeableConcept"] !== undefined){
count0++;
}
if(data["valueCoding"] !== undefined){
count0++;
}
if(data["valueContactPoint"] !== undefined){
count0++;
}
if(data["valueCount"] !== undefined){
count0++;
}
if(data["valueDistance"] !== undefined){
count0++;
}
if(data["valueDuration"] !== undefined){
count0++;
}
if(data["valueHumanName"] !== undefined){
count0++;
}
if(data["valueIdentifier"] !== undefined){
count0++;
}
if(data["valueMoney"] !== undefined){
count0++;
}
if(data["valuePeriod"] !== undefined){
count0++;
}
if(data["valueQuantity"] !== undefined){
count0++;
}
if(data["valueRange"] !== undefined){
count0++;
}
if(data["valueRatio"] !== undefined){
count0++;
}
if(data["valueReference"] !== undefined){
count0++;
}
if(data["valueSampledData"] !== undefined){
count0++;
}
if(data["valueSignature"] !== undefined){
count0++;
}
if(data["valueTiming"] !== undefined){
count0++;
}
if(data["valueContactDetail"] !== undefined){
count0++;
}
if(data["valueContributor"] !== undefined){
count0++;
}
if(data["valueDataRequirement"] !== undefined){
count0++;
}
if(data["valueExpression"] !== undefined){
count0++;
}
if(data["valueParameterDefinition"] !== undefined){
count0++;
}
if(data["valueRelatedArtifact"] !== undefined){
count0++;
}
if(data["valueTriggerDefinition"] !== undefined){
count0++;
}
if(data["valueUsageContext"] !== undefined){
count0++;
}
if(data["valueDosage"] !== undefined){
count0++;
}
if(count0 !== 1){
const err39 = {instancePath,schemaPath:"#/choices",keyword:"choices",params:{}};
if(vErrors === null){
vErrors = [err39];
}
else {
vErrors.push(err39);
}
errors++;
}
}
else {
const err40 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err40];
}
else {
vErrors.push(err40);
}
errors++;
}
validate1188.errors = vErrors;
return errors === 0;
}

const schema102 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"type":{"$ref":"#/definitions/CodeableConcept"},"valueBase64Binary":{"type":"string","pattern":"^(\\s*([0-9a-zA-Z\\+/=]){4}\\s*)+$"},"_valueBase64Binary":{"$ref":"#/definitions/Element"},"valueBoolean":{"type":"boolean"},"_valueBoolean":{"$ref":"#/definitions/Element"},"valueCanonical":{"type":"string","pattern":"^\\S*$"},"_valueCanonical":{"$ref":"#/definitions/Element"},"valueCode":{"type":"string","pattern":"^[^\\s]+(\\s[^\\s]+)*$"},"_valueCode":{"$ref":"#/definitions/Element"},"valueDate":{"type":"string","pattern":"^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1]))?)?$"},"_valueDate":{"$ref":"#/definitions/Element"},"valueDateTime":{"type":"string","pattern":"^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1])(T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00)))?)?)?$"},"_valueDateTime":{"$ref":"#/definitions/Element"},"valueDecimal":{"type":"number"},"_valueDecimal":{"$ref":"#/definitions/Element"},"valueId":{"type":"string","pattern":"^[A-Za-z0-9\\-\\.]{1,64}$"},"_valueId":{"$ref":"#/definitions/Element"},"valueInstant":{"type":"string","pattern":"^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)-(0[1-9]|1[0-2])-(0[1-9]|[1-2][0-9]|3[0-1])T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00))$"},"_valueInstant":{"$ref":"#/definitions/Element"},"valueInteger":{"type":"number"},"_valueInteger":{"$ref":"#/definitions/Element"},"valueMarkdown":{"type":"string","pattern":"^[ \\r\\n\\t\\S]+$"},"_valueMarkdown":{"$ref":"#/definitions/Element"},"valueOid":{"type":"string","pattern":"^urn:oid:[0-2](\\.(0|[1-9][0-9]*))+$"},"_valueOid":{"$ref":"#/definitions/Element"},"valuePositiveInt":{"type":"number"},"_valuePositiveInt":{"$ref":"#/definitions/Element"},"valueString":{"type":"string","pattern":"^[ \\r\\n\\t\\S]+$"},"_valueString":{"$ref":"#/definitions/Element"},"valueTime":{"type":"string","pattern":"^([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?$"},"_valueTime":{"$ref":"#/definitions/Element"},"valueUnsignedInt":{"type":"number"},"_valueUnsignedInt":{"$ref":"#/definitions/Element"},"valueUri":{"type":"string","pattern":"^\\S*$"},"_valueUri":{"$ref":"#/definitions/Element"},"valueUrl":{"type":"string","pattern":"^\\S*$"},"_valueUrl":{"$ref":"#/definitions/Element"},"valueUuid":{"type":"string","pattern":"^urn:uuid:[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$"},"_valueUuid":{"$ref":"#/definitions/Element"},"valueAddress":{"$ref":"#/definitions/Address"},"valueAge":{"$ref":"#/definitions/Age"},"valueAnnotation":{"$ref":"#/definitions/Annotation"},"valueAttachment":{"$ref":"#/definitions/Attachment"},"valueCodeableConcept":{"$ref":"#/definitions/CodeableConcept"},"valueCoding":{"$ref":"#/definitions/Coding"},"valueContactPoint":{"$ref":"#/definitions/ContactPoint"},"valueCount":{"$ref":"#/definitions/Count"},"valueDistance":{"$ref":"#/definitions/Distance"},"valueDuration":{"$ref":"#/definitions/Duration"},"valueHumanName":{"$ref":"#/definitions/HumanName"},"valueIdentifier":{"$ref":"#/definitions/Identifier"},"valueMoney":{"$ref":"#/definitions/Money"},"valuePeriod":{"$ref":"#/definitions/Period"},"valueQuantity":{"$ref":"#/definitions/Quantity"},"valueRange":{"$ref":"#/definitions/Range"},"valueRatio":{"$ref":"#/definitions/Ratio"},"valueReference":{"$ref":"#/definitions/Reference"},"valueSampledData":{"$ref":"#/definitions/SampledData"},"valueSignature":{"$ref":"#/definitions/Signature"},"valueTiming":{"$ref":"#/definitions/Timing"},"valueContactDetail":{"$ref":"#/definitions/ContactDetail"},"valueContributor":{"$ref":"#/definitions/Contributor"},"valueDataRequirement":{"$ref":"#/definitions/DataRequirement"},"valueExpression":{"$ref":"#/definitions/Expression"},"valueParameterDefinition":{"$ref":"#/definitions/ParameterDefinition"},"valueRelatedArtifact":{"$ref":"#/definitions/RelatedArtifact"},"valueTriggerDefinition":{"$ref":"#/definitions/TriggerDefinition"},"valueUsageContext":{"$ref":"#/definitions/UsageContext"},"valueDosage":{"$ref":"#/definitions/Dosage"}},"required":["type"],"choices":[{"element":"value[x]","properties":["valueBase64Binary","valueBoolean","valueCanonical","valueCode","valueDate","valueDateTime","valueDecimal","valueId","valueInstant","valueInteger","valueMarkdown","valueOid","valuePositiveInt","valueString","valueTime","valueUnsignedInt","valueUri","valueUrl","valueUuid","valueAddress","valueAge","valueAnnotation","valueAttachment","valueCodeableConcept","valueCoding","valueContactPoint","valueCount","valueDistance","valueDuration","valueHumanName","valueIdentifier","valueMoney","valuePeriod","valueQuantity","valueRange","valueRatio","valueReference","valueSampledData","valueSignature","valueTiming","valueContactDetail","valueContributor","valueDataRequirement","valueExpression","valueParameterDefinition","valueRelatedArtifact","valueTriggerDefinition","valueUsageContext","valueDosage"],"required":true}],"additionalProperties":false};

function validate1243(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.type === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "type"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
for(const key0 in data){
if(!(func2.call(schema102.properties, key0))){
const err1 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err2 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(validate28(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err3 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.modifierExtension !== undefined){
let data3 = data.modifierExtension;
if(Array.isArray(data3)){
if(data3.length < 1){
const err4 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
const len1 = data3.length;
for(let i1=0; i1<len1; i1++){
if(!(validate28(data3[i1], {instancePath:instancePath+"/modifierExtension/" + i1,parentData:data3,parentDataProperty:i1,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err5 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
if(data.type !== undefined){
if(!(validate106(data.type, {instancePath:instancePath+"/type",parentData:data,parentDataProperty:"type",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.valueBase64Binary !== undefined){
let data6 = data.valueBase64Binary;
if(typeof data6 === "string"){
if(!pattern3.test(data6)){
const err6 = {instancePath:instancePath+"/valueBase64Binary",schemaPath:"#/properties/valueBase64Binary/pattern",keyword:"pattern",params:{pattern: "^(\\s*([0-9a-zA-Z\\+/=]){4}\\s*)+$"}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
else {
const err7 = {instancePath:instancePath+"/valueBase64Binary",schemaPath:"#/properties/valueBase64Binary/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
}
if(data._valueBase64Binary !== undefined){
if(!(validate32(data._valueBase64Binary, {instancePath:instancePath+"/_valueBase64Binary",parentData:data,parentDataProperty:"_valueBase64Binary",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueBoolean !== undefined){
if(typeof data.valueBoolean !== "boolean"){
const err8 = {instancePath:instancePath+"/valueBoolean",schemaPath:"#/properties/valueBoolean/type",keyword:"type",params:{type: "boolean"}};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
}
if(data._valueBoolean !== undefined){
if(!(validate32(data._valueBoolean, {instancePath:instancePath+"/_valueBoolean",parentData:data,parentDataProperty:"_valueBoolean",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueCanonical !== undefined){
let data10 = data.valueCanonical;
if(typeof data10 === "string"){
if(!pattern2.test(data10)){
const err9 = {instancePath:instancePath+"/valueCanonical",schemaPath:"#/properties/valueCanonical/pattern",keyword:"pattern",params:{pattern: "^\\S*$"}};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
}
else {
const err10 = {instancePath:instancePath+"/valueCanonical",schemaPath:"#/properties/valueCanonical/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err10];
}
else {
vErrors.push(err10);
}
errors++;
}
}
if(data._valueCanonical !== undefined){
if(!(validate32(data._valueCanonical, {instancePath:instancePath+"/_valueCanonical",parentData:data,parentDataProperty:"_valueCanonical",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueCode !== undefined){
let data12 = data.valueCode;
if(typeof data12 === "string"){
if(!pattern5.test(data12)){
const err11 = {instancePath:instancePath+"/valueCode",schemaPath:"#/properties/valueCode/pattern",keyword:"pattern",params:{pattern: "^[^\\s]+(\\s[^\\s]+)*$"}};
if(vErrors === null){
vErrors = [err11];
}
else {
vErrors.push(err11);
}
errors++;
}
}
else {
const err12 = {instancePath:instancePath+"/valueCode",schemaPath:"#/properties/valueCode/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err12];
}
else {
vErrors.push(err12);
}
errors++;
}
}
if(data._valueCode !== undefined){
if(!(validate32(data._valueCode, {instancePath:instancePath+"/_valueCode",parentData:data,parentDataProperty:"_valueCode",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueDate !== undefined){
let data14 = data.valueDate;
if(typeof data14 === "string"){
if(!pattern6.test(data14)){
const err13 = {instancePath:instancePath+"/valueDate",schemaPath:"#/properties/valueDate/pattern",keyword:"pattern",params:{pattern: "^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1]))?)?$"}};
if(vErrors === null){
vErrors = [err13];
}
else {
vErrors.push(err13);
}
errors++;
}
}
else {
const err14 = {instancePath:instancePath+"/valueDate",schemaPath:"#/properties/valueDate/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err14];
}
else {
vErrors.push(err14);
}
errors++;
}
}
if(data._valueDate !== undefined){
if(!(validate32(data._valueDate, {instancePath:instancePath+"/_valueDate",parentData:data,parentDataProperty:"_valueDate",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueDateTime !== undefined){
let data16 = data.valueDateTime;
if(typeof data16 === "string"){
if(!pattern7.test(data16)){
const err15 = {instancePath:instancePath+"/valueDateTime",schemaPath:"#/properties/valueDateTime/pattern",keyword:"pattern",params:{pattern: "^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1])(T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00)))?)?)?$"}};
if(vErrors === null){
vErrors = [err15];
}
else {
vErrors.push(err15);
}
errors++;
}
}
else {
const err16 = {instancePath:instancePath+"/valueDateTime",schemaPath:"#/properties/valueDateTime/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err16];
}
else {
vErrors.push(err16);
}
errors++;
}
}
if(data._valueDateTime !== undefined){
if(!(validate32(data._valueDateTime, {instancePath:instancePath+"/_valueDateTime",parentData:data,parentDataProperty:"_valueDateTime",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueDecimal !== undefined){
let data18 = data.valueDecimal;
if(!((typeof data18 == "number") && (isFinite(data18)))){
const err17 = {instancePath:instancePath+"/valueDecimal",schemaPath:"#/properties/valueDecimal/type",keyword:"type",params:{type: "number"}};
if(vErrors === null){
vErrors = [err17];
}
else {
vErrors.push(err17);
}
errors++;
}
}
if(data._valueDecimal !== undefined){
if(!(validate32(data._valueDecimal, {instancePath:instancePath+"/_valueDecimal",parentData:data,parentDataProperty:"_valueDecimal",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueId !== undefined){
let data20 = data.valueId;
if(typeof data20 === "string"){
if(!pattern0.test(data20)){
const err18 = {instancePath:instancePath+"/valueId",schemaPath:"#/properties/valueId/pattern",keyword:"pattern",params:{pattern: "^[A-Za-z0-9\\-\\.]{1,64}$"}};
if(vErrors === null){
vErrors = [err18];
}
else {
vErrors.push(err18);
}
errors++;
}
}
else {
const err19 = {instancePath:instancePath+"/valueId",schemaPath:"#/properties/valueId/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err19];
}
else {
vErrors.push(err19);
}
errors++;
}
}
if(data._valueId !== undefined){
if(!(validate32(data._valueId, {instancePath:instancePath+"/_valueId",parentData:data,parentDataProperty:"_valueId",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueInstant !== undefined){
let data22 = data.valueInstant;
if(typeof data22 === "string"){
if(!pattern9.test(data22)){
const err20 = {instancePath:instancePath+"/valueInstant",schemaPath:"#/properties/valueInstant/pattern",keyword:"pattern",params:{pattern: "^([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)-(0[1-9]|1[0-2])-(0[1-9]|[1-2][0-9]|3[0-1])T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00))$"}};
if(vErrors === null){
vErrors = [err20];
}
else {
vErrors.push(err20);
}
errors++;
}
}
else {
const err21 = {instancePath:instancePath+"/valueInstant",schemaPath:"#/properties/valueInstant/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err21];
}
else {
vErrors.push(err21);
}
errors++;
}
}
if(data._valueInstant !== undefined){
if(!(validate32(data._valueInstant, {instancePath:instancePath+"/_valueInstant",parentData:data,parentDataProperty:"_valueInstant",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueInteger !== undefined){
let data24 = data.valueInteger;
if(!((typeof data24 == "number") && (isFinite(data24)))){
const err22 = {instancePath:instancePath+"/valueInteger",schemaPath:"#/properties/valueInteger/type",keyword:"type",params:{type: "number"}};
if(vErrors === null){
vErrors = [err22];
}
else {
vErrors.push(err22);
}
errors++;
}
}
if(data._valueInteger !== undefined){
if(!(validate32(data._valueInteger, {instancePath:instancePath+"/_valueInteger",parentData:data,parentDataProperty:"_valueInteger",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueMarkdown !== undefined){
let data26 = data.valueMarkdown;
if(typeof data26 === "string"){
if(!pattern1.test(data26)){
const err23 = {instancePath:instancePath+"/valueMarkdown",schemaPath:"#/properties/valueMarkdown/pattern",keyword:"pattern",params:{pattern: "^[ \\r\\n\\t\\S]+$"}};
if(vErrors === null){
vErrors = [err23];
}
else {
vErrors.push(err23);
}
errors++;
}
}
else {
const err24 = {instancePath:instancePath+"/valueMarkdown",schemaPath:"#/properties/valueMarkdown/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err24];
}
else {
vErrors.push(err24);
}
errors++;
}
}
if(data._valueMarkdown !== undefined){
if(!(validate32(data._valueMarkdown, {instancePath:instancePath+"/_valueMarkdown",parentData:data,parentDataProperty:"_valueMarkdown",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueOid !== undefined){
let data28 = data.valueOid;
if(typeof data28 === "string"){
if(!pattern11.test(data28)){
const err25 = {instancePath:instancePath+"/valueOid",schemaPath:"#/properties/valueOid/pattern",keyword:"pattern",params:{pattern: "^urn:oid:[0-2](\\.(0|[1-9][0-9]*))+$"}};
if(vErrors === null){
vErrors = [err25];
}
else {
vErrors.push(err25);
}
errors++;
}
}
else {
const err26 = {instancePath:instancePath+"/valueOid",schemaPath:"#/properties/valueOid/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err26];
}
else {
vErrors.push(err26);
}
errors++;
}
}
if(data._valueOid !== undefined){
if(!(validate32(data._valueOid, {instancePath:instancePath+"/_valueOid",parentData:data,parentDataProperty:"_valueOid",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valuePositiveInt !== undefined){
let data30 = data.valuePositiveInt;
if(!((typeof data30 == "number") && (isFinite(data30)))){
const err27 = {instancePath:instancePath+"/valuePositiveInt",schemaPath:"#/properties/valuePositiveInt/type",keyword:"type",params:{type: "number"}};
if(vErrors === null){
vErrors = [err27];
}
else {
vErrors.push(err27);
}
errors++;
}
}
if(data._valuePositiveInt !== undefined){
if(!(validate32(data._valuePositiveInt, {instancePath:instancePath+"/_valuePositiveInt",parentData:data,parentDataProperty:"_valuePositiveInt",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueString !== undefined){
let data32 = data.valueString;
if(typeof data32 === "string"){
if(!pattern1.test(data32)){
const err28 = {instancePath:instancePath+"/valueString",schemaPath:"#/properties/valueString/pattern",keyword:"pattern",params:{pattern: "^[ \\r\\n\\t\\S]+$"}};
if(vErrors === null){
vErrors = [err28];
}
else {
vErrors.push(err28);
}
errors++;
}
}
else {
const err29 = {instancePath:instancePath+"/valueString",schemaPath:"#/properties/valueString/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err29];
}
else {
vErrors.push(err29);
}
errors++;
}
}
if(data._valueString !== undefined){
if(!(validate32(data._valueString, {instancePath:instancePath+"/_valueString",parentData:data,parentDataProperty:"_valueString",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueTime !== undefined){
let data34 = data.valueTime;
if(typeof data34 === "string"){
if(!pattern13.test(data34)){
const err30 = {instancePath:instancePath+"/valueTime",schemaPath:"#/properties/valueTime/pattern",keyword:"pattern",params:{pattern: "^([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?$"}};
if(vErrors === null){
vErrors = [err30];
}
else {
vErrors.push(err30);
}
errors++;
}
}
else {
const err31 = {instancePath:instancePath+"/valueTime",schemaPath:"#/properties/valueTime/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err31];
}
else {
vErrors.push(err31);
}
errors++;
}
}
if(data._valueTime !== undefined){
if(!(validate32(data._valueTime, {instancePath:instancePath+"/_valueTime",parentData:data,parentDataProperty:"_valueTime",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueUnsignedInt !== undefined){
let data36 = data.valueUnsignedInt;
if(!((typeof data36 == "number") && (isFinite(data36)))){
const err32 = {instancePath:instancePath+"/valueUnsignedInt",schemaPath:"#/properties/valueUnsignedInt/type",keyword:"type",params:{type: "number"}};
if(vErrors === null){
vErrors = [err32];
}
else {
vErrors.push(err32);
}
errors++;
}
}
if(data._valueUnsignedInt !== undefined){
if(!(validate32(data._valueUnsignedInt, {instancePath:instancePath+"/_valueUnsignedInt",parentData:data,parentDataProperty:"_valueUnsignedInt",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueUri !== undefined){
let data38 = data.valueUri;
if(typeof data38 === "string"){
if(!pattern2.test(data38)){
const err33 = {instancePath:instancePath+"/valueUri",schemaPath:"#/properties/valueUri/pattern",keyword:"pattern",params:{pattern: "^\\S*$"}};
if(vErrors === null){
vErrors = [err33];
}
else {
vErrors.push(err33);
}
errors++;
}
}
else {
const err34 = {instancePath:instancePath+"/valueUri",schemaPath:"#/properties/valueUri/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err34];
}
else {
vErrors.push(err34);
}
errors++;
}
}
if(data._valueUri !== undefined){
if(!(validate32(data._valueUri, {instancePath:instancePath+"/_valueUri",parentData:data,parentDataProperty:"_valueUri",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueUrl !== undefined){
let data40 = data.valueUrl;
if(typeof data40 === "string"){
if(!pattern2.test(data40)){
const err35 = {instancePath:instancePath+"/valueUrl",schemaPath:"#/properties/valueUrl/pattern",keyword:"pattern",params:{pattern: "^\\S*$"}};
if(vErrors === null){
vErrors = [err35];
}
else {
vErrors.push(err35);
}
errors++;
}
}
else {
const err36 = {instancePath:instancePath+"/valueUrl",schemaPath:"#/properties/valueUrl/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err36];
}
else {
vErrors.push(err36);
}
errors++;
}
}
if(data._valueUrl !== undefined){
if(!(validate32(data._valueUrl, {instancePath:instancePath+"/_valueUrl",parentData:data,parentDataProperty:"_valueUrl",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueUuid !== undefined){
let data42 = data.valueUuid;
if(typeof data42 === "string"){
if(!pattern16.test(data42)){
const err37 = {instancePath:instancePath+"/valueUuid",schemaPath:"#/properties/valueUuid/pattern",keyword:"pattern",params:{pattern: "^urn:uuid:[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$"}};
if(vErrors === null){
vErrors = [err37];
}
else {
vErrors.push(err37);
}
errors++;
}
}
else {
const err38 = {instancePath:instancePath+"/valueUuid",schemaPath:"#/properties/valueUuid/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err38];
}
else {
vErrors.push(err38);
}
errors++;
}
}
if(data._valueUuid !== undefined){
if(!(validate32(data._valueUuid, {instancePath:instancePath+"/_valueUuid",parentData:data,parentDataProperty:"_valueUuid",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.valueAddress !== undefined){
if(!(validate54(data.valueAddress, {instancePath:instancePath+"/valueAddress",parentData:data,parentDataProperty:"valueAddress",rootData}))){
vErrors = vErrors === null ? validate54.errors : vErrors.concat(validate54.errors);
errors = vErrors.length;
}
}
if(data.valueAge !== undefined){
if(!(validate81(data.valueAge, {instancePath:instancePath+"/valueAge",parentData:data,parentDataProperty:"valueAge",rootData}))){
vErrors = vErrors === null ? validate81.errors : vErrors.concat(validate81.errors);
errors = vErrors.length;
}
}
if(data.valueAnnotation !== undefined){
if(!(validate95(data.valueAnnotation, {instancePath:instancePath+"/valueAnnotation",parentData:data,parentDataProperty:"valueAnnotation",rootData}))){
vErrors = vErrors === null ? validate95.errors : vErrors.concat(validate95.errors);
errors = vErrors.length;
}
}
if(data.valueAttachment !== undefined){
if(!(validate141(data.valueAttachment, {instancePath:instancePath+"/valueAttachment",parentData:data,parentDataProperty:"valueAttachment",rootData}))){
vErrors = vErrors === null ? validate141.errors : vErrors.concat(validate141.errors);
errors = vErrors.length;
}
}
if(data.valueCodeableConcept !== undefined){
if(!(validate106(data.valueCodeableConcept, {instancePath:instancePath+"/valueCodeableConcept",parentData:data,parentDataProperty:"valueCodeableConcept",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.valueCoding !== undefined){
if(!(validate108(data.valueCoding, {instancePath:instancePath+"/valueCoding",parentData:data,parentDataProperty:"valueCoding",rootData}))){
vErrors = vErrors === null ? validate108.errors : vErrors.concat(validate108.errors);
errors = vErrors.length;
}
}
if(data.valueContactPoint !== undefined){
if(!(validate165(data.valueContactPoint, {instancePath:instancePath+"/valueContactPoint",parentData:data,parentDataProperty:"valueContactPoint",rootData}))){
vErrors = vErrors === null ? validate165.errors : vErrors.concat(validate165.errors);
errors = vErrors.length;
}
}
if(data.valueCount !== undefined){
if(!(validate176(data.valueCount, {instancePath:instancePath+"/valueCount",parentData:data,parentDataProperty:"valueCount",rootData}))){
vErrors = vErrors === null ? validate176.errors : vErrors.concat(validate176.errors);
errors = vErrors.length;
}
}
if(data.valueDistance !== undefined){
if(!(validate188(data.valueDistance, {instancePath:instancePath+"/valueDistance",parentData:data,parentDataProperty:"valueDistance",rootData}))){
vErrors = vErrors === null ? validate188.errors : vErrors.concat(validate188.errors);
errors = vErrors.length;
}
}
if(data.valueDuration !== undefined){
if(!(validate200(data.valueDuration, {instancePath:instancePath+"/valueDuration",parentData:data,parentDataProperty:"valueDuration",rootData}))){
vErrors = vErrors === null ? validate200.errors : vErrors.concat(validate200.errors);
errors = vErrors.length;
}
}
if(data.valueHumanName !== undefined){
if(!(validate212(data.valueHumanName, {instancePath:instancePath+"/valueHumanName",parentData:data,parentDataProperty:"valueHumanName",rootData}))){
vErrors = vErrors === null ? validate212.errors : vErrors.concat(validate212.errors);
errors = vErrors.length;
}
}
if(data.valueIdentifier !== undefined){
if(!(validate103(data.valueIdentifier, {instancePath:instancePath+"/valueIdentifier",parentData:data,parentDataProperty:"valueIdentifier",rootData}))){
vErrors = vErrors === null ? validate103.errors : vErrors.concat(validate103.errors);
errors = vErrors.length;
}
}
if(data.valueMoney !== undefined){
if(!(validate228(data.valueMoney, {instancePath:instancePath+"/valueMoney",parentData:data,parentDataProperty:"valueMoney",rootData}))){
vErrors = vErrors === null ? validate228.errors : vErrors.concat(validate228.errors);
errors = vErrors.length;
}
}
if(data.valuePeriod !== undefined){
if(!(validate72(data.valuePeriod, {instancePath:instancePath+"/valuePeriod",parentData:data,parentDataProperty:"valuePeriod",rootData}))){
vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
errors = vErrors.length;
}
}
if(data.valueQuantity !== undefined){
if(!(validate236(data.valueQuantity, {instancePath:instancePath+"/valueQuantity",parentData:data,parentDataProperty:"valueQuantity",rootData}))){
vErrors = vErrors === null ? validate236.errors : vErrors.concat(validate236.errors);
errors = vErrors.length;
}
}
if(data.valueRange !== undefined){
if(!(validate248(data.valueRange, {instancePath:instancePath+"/valueRange",parentData:data,parentDataProperty:"valueRange",rootData}))){
vErrors = vErrors === null ? validate248.errors : vErrors.concat(validate248.errors);
errors = vErrors.length;
}
}
if(data.valueRatio !== undefined){
if(!(validate253(data.valueRatio, {instancePath:instancePath+"/valueRatio",parentData:data,parentDataProperty:"valueRatio",rootData}))){
vErrors = vErrors === null ? validate253.errors : vErrors.concat(validate253.errors);
errors = vErrors.length;
}
}
if(data.valueReference !== undefined){
if(!(validate97(data.valueReference, {instancePath:instancePath+"/valueReference",parentData:data,parentDataProperty:"valueReference",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
if(data.valueSampledData !== undefined){
if(!(validate259(data.valueSampledData, {instancePath:instancePath+"/valueSampledData",parentData:data,parentDataProperty:"valueSampledData",rootData}))){
vErrors = vErrors === null ? validate259.errors : vErrors.concat(validate259.errors);
errors = vErrors.length;
}
}
if(data.valueSignature !== undefined){
if(!(validate275(data.valueSignature, {instancePath:instancePath+"/valueSignature",parentData:data,parentDataProperty:"valueSignature",rootData}))){
vErrors = vErrors === null ? validate275.errors : vErrors.concat(validate275.errors);
errors = vErrors.length;
}
}
if(data.valueTiming !== undefined){
if(!(validate290(data.valueTiming, {instancePath:instancePath+"/valueTiming",parentData:data,parentDataProperty:"valueTiming",rootData}))){
vErrors = vErrors === null ? validate290.errors : vErrors.concat(validate290.errors);
errors = vErrors.length;
}
}
if(data.valueContactDetail !== undefined){
if(!(validate327(data.valueContactDetail, {instancePath:instancePath+"/valueContactDetail",parentData:data,parentDataProperty:"valueContactDetail",rootData}))){
vErrors = vErrors === null ? validate327.errors : vErrors.concat(validate327.errors);
errors = vErrors.length;
}
}
if(data.valueContributor !== undefined){
if(!(validate333(data.valueContributor, {instancePath:instancePath+"/valueContributor",parentData:data,parentDataProperty:"valueContributor",rootData}))){
vErrors = vErrors === null ? validate333.errors : vErrors.concat(validate333.errors);
errors = vErrors.length;
}
}
if(data.valueDataRequirement !== undefined){
if(!(validate340(data.valueDataRequirement, {instancePath:instancePath+"/valueDataRequirement",parentData:data,parentDataProperty:"valueDataRequirement",rootData}))){
vErrors = vErrors === null ? validate340.errors : vErrors.concat(validate340.errors);
errors = vErrors.length;
}
}
if(data.valueExpression !== undefined){
if(!(validate377(data.valueExpression, {instancePath:instancePath+"/valueExpression",parentData:data,parentDataProperty:"valueExpression",rootData}))){
vErrors = vErrors === null ? validate377.errors : vErrors.concat(validate377.errors);
errors = vErrors.length;
}
}
if(data.valueParameterDefinition !== undefined){
if(!(validate389(data.valueParameterDefinition, {instancePath:instancePath+"/valueParameterDefinition",parentData:data,parentDataProperty:"valueParameterDefinition",rootData}))){
vErrors = vErrors === null ? validate389.errors : vErrors.concat(validate389.errors);
errors = vErrors.length;
}
}
if(data.valueRelatedArtifact !== undefined){
if(!(validate404(data.valueRelatedArtifact, {instancePath:instancePath+"/valueRelatedArtifact",parentData:data,parentDataProperty:"valueRelatedArtifact",rootData}))){
vErrors = vErrors === null ? validate404.errors : vErrors.concat(validate404.errors);
errors = vErrors.length;
}
}
if(data.valueTriggerDefinition !== undefined){
if(!(validate418(data.valueTriggerDefinition, {instancePath:instancePath+"/valueTriggerDefinition",parentData:data,parentDataProperty:"valueTriggerDefinition",rootData}))){
vErrors = vErrors === null ? validate418.errors : vErrors.concat(validate418.errors);
errors = vErrors.length;
}
}
if(data.valueUsageContext !== undefined){
if(!(validate430(data.valueUsageContext, {instancePath:instancePath+"/valueUsageContext",parentData:data,parentDataProperty:"valueUsageContext",rootData}))){
vErrors = vErrors === null ? validate430.errors : vErrors.concat(validate430.errors);
errors = vErrors.length;
}
}
if(data.valueDosage !== undefined){
if(!(validate438(data.valueDosage, {instancePath:instancePath+"/valueDosage",parentData:data,parentDataProperty:"valueDosage",rootData}))){
vErrors = vErrors === null ? validate438.errors : vErrors.concat(validate438.errors);
errors = vErrors.length;
}
}
let count0 = 0;
if(data["valueBase64Binary"] !== undefined){
count0++;
}
if(data["valueBoolean"] !== undefined){
count0++;
}
if(data["valueCanonical"] !== undefined){
count0++;
}
if(data["valueCode"] !== undefined){
count0++;
}
if(data["valueDate"] !== undefined){
count0++;
}
if(data["valueDateTime"] !== undefined){
count0++;
}
if(data["valueDecimal"] !== undefined){
count0++;
}
if(data["valueId"] !== undefined){
count0++;
}
if(data["valueInstant"] !== undefined){
count0++;
}
if(data["valueInteger"] !== undefined){
count0++;
}
if(data["valueMarkdown"] !== undefined){
count0++;
}
if(data["valueOid"] !== undefined){
count0++;
}
if(data["valuePositiveInt"] !== undefined){
count0++;
}
if(data["valueString"] !== undefined){
count0++;
}
if(data["valueTime"] !== undefined){
count0++;
}
if(data["valueUnsignedInt"] !== undefined){
count0++;
}
if(data["valueUri"] !== undefined){
count0++;
}
if(data["valueUrl"] !== undefined){
count0++;
}
if(data["valueUuid"] !== undefined){
count0++;
}
if(data["valueAddress"] !== undefined){
count0++;
}
if(data["valueAge"] !== undefined){
count0++;
}
if(data["valueAnnotation"] !== undefined){
count0++;
}
if(data["valueAttachment"] !== undefined){
count0++;
}
if(data["valueCodeableConcept"] !== undefined){
count0++;
}
if(data["valueCoding"] !== undefined){
count0++;
}
if(data["valueContactPoint"] !== undefined){
count0++;
}
if(data["valueCount"] !== undefined){
count0++;
}
if(data["valueDistance"] !== undefined){
count0++;
}
if(data["valueDuration"] !== undefined){
count0++;
}
if(data["valueHumanName"] !== undefined){
count0++;
}
if(data["valueIdentifier"] !== undefined){
count0++;
}
if(data["valueMoney"] !== undefined){
count0++;
}
if(data["valuePeriod"] !== undefined){
count0++;
}
if(data["valueQuantity"] !== undefined){
count0++;
}
if(data["valueRange"] !== undefined){
count0++;
}
if(data["valueRatio"] !== undefined){
count0++;
}
if(data["valueReference"] !== undefined){
count0++;
}
if(data["valueSampledData"] !== undefined){
count0++;
}
if(data["valueSignature"] !== undefined){
count0++;
}
if(data["valueTiming"] !== undefined){
count0++;
}
if(data["valueContactDetail"] !== undefined){
count0++;
}
if(data["valueContributor"] !== undefined){
count0++;
}
if(data["valueDataRequirement"] !== undefined){
count0++;
}
if(data["valueExpression"] !== undefined){
count0++;
}
if(data["valueParameterDefinition"] !== undefined){
count0++;
}
if(data["valueRelatedArtifact"] !== undefined){
count0++;
}
if(data["valueTriggerDefinition"] !== undefined){
count0++;
}
if(data["valueUsageContext"] !== undefined){
count0++;
}
if(data["valueDosage"] !== undefined){
count0++;
}
if(count0 !== 1){
const err39 = {instancePath,schemaPath:"#/choices",keyword:"choices",params:{}};
if(vErrors === null){
vErrors = [err39];
}
else {
vErrors.push(err39);
}
errors++;
}
}
else {
const err40 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err40];
}
else {
vErrors.push(err40);
}
errors++;
}
validate1243.errors = vErrors;
return errors === 0;
}


function validate1137(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.intent === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "intent"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.resourceType === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "resourceType"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(data.status === undefined){
const err2 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "status"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
for(const key0 in data){
if(!(func2.call(schema99.properties, key0))){
const err3 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.resourceType !== undefined){
if("Task" !== data.resourceType){
const err4 = {instancePath:instancePath+"/resourceType",schemaPath:"#/properties/resourceType/const",keyword:"const",params:{allowedValue: "Task"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate23(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate23.errors : vErrors.concat(validate23.errors);
errors = vErrors.length;
}
}
if(data.meta !== undefined){
if(!(validate25(data.meta, {instancePath:instancePath+"/meta",parentData:data,parentDataProperty:"meta",rootData}))){
vErrors = vErrors === null ? validate25.errors : vErrors.concat(validate25.errors);
errors = vErrors.length;
}
}
if(data.implicitRules !== undefined){
if(!(validate30(data.implicitRules, {instancePath:instancePath+"/implicitRules",parentData:data,parentDataProperty:"implicitRules",rootData}))){
vErrors = vErrors === null ? validate30.errors : vErrors.concat(validate30.errors);
errors = vErrors.length;
}
}
if(data._implicitRules !== undefined){
if(!(validate32(data._implicitRules, {instancePath:instancePath+"/_implicitRules",parentData:data,parentDataProperty:"_implicitRules",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.language !== undefined){
if(!(validate91(data.language, {instancePath:instancePath+"/language",parentData:data,parentDataProperty:"language",rootData}))){
vErrors = vErrors === null ? validate91.errors : vErrors.concat(validate91.errors);
errors = vErrors.length;
}
}
if(data._language !== undefined){
if(!(validate32(data._language, {instancePath:instancePath+"/_language",parentData:data,parentDataProperty:"_language",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.text !== undefined){
if(!(validate511(data.text, {instancePath:instancePath+"/text",parentData:data,parentDataProperty:"text",rootData}))){
vErrors = vErrors === null ? validate511.errors : vErrors.concat(validate511.errors);
errors = vErrors.length;
}
}
if(data.contained !== undefined){
let data8 = data.contained;
if(Array.isArray(data8)){
if(data8.length < 1){
const err5 = {instancePath:instancePath+"/contained",schemaPath:"#/properties/contained/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
const len0 = data8.length;
for(let i0=0; i0<len0; i0++){
if(!(wrapper40.validate(data8[i0], {instancePath:instancePath+"/contained/" + i0,parentData:data8,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? wrapper40.validate.errors : vErrors.concat(wrapper40.validate.errors);
errors = vErrors.length;
}
}
}
else {
const err6 = {instancePath:instancePath+"/contained",schemaPath:"#/properties/contained/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
if(data.extension !== undefined){
let data10 = data.extension;
if(Array.isArray(data10)){
if(data10.length < 1){
const err7 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
const len1 = data10.length;
for(let i1=0; i1<len1; i1++){
if(!(validate28(data10[i1], {instancePath:instancePath+"/extension/" + i1,parentData:data10,parentDataProperty:i1,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err8 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
}
if(data.modifierExtension !== undefined){
let data12 = data.modifierExtension;
if(Array.isArray(data12)){
if(data12.length < 1){
const err9 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
const len2 = data12.length;
for(let i2=0; i2<len2; i2++){
if(!(validate28(data12[i2], {instancePath:instancePath+"/modifierExtension/" + i2,parentData:data12,parentDataProperty:i2,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err10 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err10];
}
else {
vErrors.push(err10);
}
errors++;
}
}
if(data.identifier !== undefined){
let data14 = data.identifier;
if(Array.isArray(data14)){
if(data14.length < 1){
const err11 = {instancePath:instancePath+"/identifier",schemaPath:"#/properties/identifier/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err11];
}
else {
vErrors.push(err11);
}
errors++;
}
const len3 = data14.length;
for(let i3=0; i3<len3; i3++){
if(!(validate103(data14[i3], {instancePath:instancePath+"/identifier/" + i3,parentData:data14,parentDataProperty:i3,rootData}))){
vErrors = vErrors === null ? validate103.errors : vErrors.concat(validate103.errors);
errors = vErrors.length;
}
}
}
else {
const err12 = {instancePath:instancePath+"/identifier",schemaPath:"#/properties/identifier/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err12];
}
else {
vErrors.push(err12);
}
errors++;
}
}
if(data.instantiatesCanonical !== undefined){
if(!(validate343(data.instantiatesCanonical, {instancePath:instancePath+"/instantiatesCanonical",parentData:data,parentDataProperty:"instantiatesCanonical",rootData}))){
vErrors = vErrors === null ? validate343.errors : vErrors.concat(validate343.errors);
errors = vErrors.length;
}
}
if(data.instantiatesUri !== undefined){
if(!(validate30(data.instantiatesUri, {instancePath:instancePath+"/instantiatesUri",parentData:data,parentDataProperty:"instantiatesUri",rootData}))){
vErrors = vErrors === null ? validate30.errors : vErrors.concat(validate30.errors);
errors = vErrors.length;
}
}
if(data._instantiatesUri !== undefined){
if(!(validate32(data._instantiatesUri, {instancePath:instancePath+"/_instantiatesUri",parentData:data,parentDataProperty:"_instantiatesUri",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.basedOn !== undefined){
let data19 = data.basedOn;
if(Array.isArray(data19)){
if(data19.length < 1){
const err13 = {instancePath:instancePath+"/basedOn",schemaPath:"#/properties/basedOn/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err13];
}
else {
vErrors.push(err13);
}
errors++;
}
const len4 = data19.length;
for(let i4=0; i4<len4; i4++){
if(!(validate97(data19[i4], {instancePath:instancePath+"/basedOn/" + i4,parentData:data19,parentDataProperty:i4,rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
}
else {
const err14 = {instancePath:instancePath+"/basedOn",schemaPath:"#/properties/basedOn/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err14];
}
else {
vErrors.push(err14);
}
errors++;
}
}
if(data.groupIdentifier !== undefined){
if(!(validate103(data.groupIdentifier, {instancePath:instancePath+"/groupIdentifier",parentData:data,parentDataProperty:"groupIdentifier",rootData}))){
vErrors = vErrors === null ? validate103.errors : vErrors.concat(validate103.errors);
errors = vErrors.length;
}
}
if(data.partOf !== undefined){
let data22 = data.partOf;
if(Array.isArray(data22)){
if(data22.length < 1){
const err15 = {instancePath:instancePath+"/partOf",schemaPath:"#/properties/partOf/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err15];
}
else {
vErrors.push(err15);
}
errors++;
}
const len5 = data22.length;
for(let i5=0; i5<len5; i5++){
if(!(validate97(data22[i5], {instancePath:instancePath+"/partOf/" + i5,parentData:data22,parentDataProperty:i5,rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
}
else {
const err16 = {instancePath:instancePath+"/partOf",schemaPath:"#/properties/partOf/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err16];
}
else {
vErrors.push(err16);
}
errors++;
}
}
if(data.status !== undefined){
let data24 = data.status;
if(!((((((((((((data24 === "draft") || (data24 === "requested")) || (data24 === "received")) || (data24 === "accepted")) || (data24 === "rejected")) || (data24 === "ready")) || (data24 === "cancelled")) || (data24 === "in-progress")) || (data24 === "on-hold")) || (data24 === "failed")) || (data24 === "completed")) || (data24 === "entered-in-error"))){
const err17 = {instancePath:instancePath+"/status",schemaPath:"#/properties/status/enum",keyword:"enum",params:{allowedValues: schema99.properties.status.enum}};
if(vErrors === null){
vErrors = [err17];
}
else {
vErrors.push(err17);
}
errors++;
}
}
if(data._status !== undefined){
if(!(validate32(data._status, {instancePath:instancePath+"/_status",parentData:data,parentDataProperty:"_status",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.statusReason !== undefined){
if(!(validate106(data.statusReason, {instancePath:instancePath+"/statusReason",parentData:data,parentDataProperty:"statusReason",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.businessStatus !== undefined){
if(!(validate106(data.businessStatus, {instancePath:instancePath+"/businessStatus",parentData:data,parentDataProperty:"businessStatus",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.intent !== undefined){
let data28 = data.intent;
if(!(((((((((data28 === "unknown") || (data28 === "proposal")) || (data28 === "plan")) || (data28 === "order")) || (data28 === "original-order")) || (data28 === "reflex-order")) || (data28 === "filler-order")) || (data28 === "instance-order")) || (data28 === "option"))){
const err18 = {instancePath:instancePath+"/intent",schemaPath:"#/properties/intent/enum",keyword:"enum",params:{allowedValues: schema99.properties.intent.enum}};
if(vErrors === null){
vErrors = [err18];
}
else {
vErrors.push(err18);
}
errors++;
}
}
if(data._intent !== undefined){
if(!(validate32(data._intent, {instancePath:instancePath+"/_intent",parentData:data,parentDataProperty:"_intent",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.priority !== undefined){
let data30 = data.priority;
if(!((((data30 === "routine") || (data30 === "urgent")) || (data30 === "asap")) || (data30 === "stat"))){
const err19 = {instancePath:instancePath+"/priority",schemaPath:"#/properties/priority/enum",keyword:"enum",params:{allowedValues: schema99.properties.priority.enum}};
if(vErrors === null){
vErrors = [err19];
}
else {
vErrors.push(err19);
}
errors++;
}
}
if(data._priority !== undefined){
if(!(validate32(data._priority, {instancePath:instancePath+"/_priority",parentData:data,parentDataProperty:"_priority",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.code !== undefined){
if(!(validate106(data.code, {instancePath:instancePath+"/code",parentData:data,parentDataProperty:"code",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.description !== undefined){
if(!(validate26(data.description, {instancePath:instancePath+"/description",parentData:data,parentDataProperty:"description",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._description !== undefined){
if(!(validate32(data._description, {instancePath:instancePath+"/_description",parentData:data,parentDataProperty:"_description",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.focus !== undefined){
if(!(validate97(data.focus, {instancePath:instancePath+"/focus",parentData:data,parentDataProperty:"focus",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
if(data.for !== undefined){
if(!(validate97(data.for, {instancePath:instancePath+"/for",parentData:data,parentDataProperty:"for",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
if(data.encounter !== undefined){
if(!(validate97(data.encounter, {instancePath:instancePath+"/encounter",parentData:data,parentDataProperty:"encounter",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
if(data.executionPeriod !== undefined){
if(!(validate72(data.executionPeriod, {instancePath:instancePath+"/executionPeriod",parentData:data,parentDataProperty:"executionPeriod",rootData}))){
vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
errors = vErrors.length;
}
}
if(data.authoredOn !== undefined){
if(!(validate74(data.authoredOn, {instancePath:instancePath+"/authoredOn",parentData:data,parentDataProperty:"authoredOn",rootData}))){
vErrors = vErrors === null ? validate74.errors : vErrors.concat(validate74.errors);
errors = vErrors.length;
}
}
if(data._authoredOn !== undefined){
if(!(validate32(data._authoredOn, {instancePath:instancePath+"/_authoredOn",parentData:data,parentDataProperty:"_authoredOn",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.lastModified !== undefined){
if(!(validate74(data.lastModified, {instancePath:instancePath+"/lastModified",parentData:data,parentDataProperty:"lastModified",rootData}))){
vErrors = vErrors === null ? validate74.errors : vErrors.concat(validate74.errors);
errors = vErrors.length;
}
}
if(data._lastModified !== undefined){
if(!(validate32(data._lastModified, {instancePath:instancePath+"/_lastModified",parentData:data,parentDataProperty:"_lastModified",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.requester !== undefined){
if(!(validate97(data.requester, {instancePath:instancePath+"/requester",parentData:data,parentDataProperty:"requester",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
if(data.performerType !== undefined){
let data44 = data.performerType;
if(Array.isArray(data44)){
if(data44.length < 1){
const err20 = {instancePath:instancePath+"/performerType",schemaPath:"#/properties/performerType/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err20];
}
else {
vErrors.push(err20);
}
errors++;
}
const len6 = data44.length;
for(let i6=0; i6<len6; i6++){
if(!(validate106(data44[i6], {instancePath:instancePath+"/performerType/" + i6,parentData:data44,parentDataProperty:i6,rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
}
else {
const err21 = {instancePath:instancePath+"/performerType",schemaPath:"#/properties/performerType/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err21];
}
else {
vErrors.push(err21);
}
errors++;
}
}
if(data.owner !== undefined){
if(!(validate97(data.owner, {instancePath:instancePath+"/owner",parentData:data,parentDataProperty:"owner",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
if(data.location !== undefined){
if(!(validate97(data.location, {instancePath:instancePath+"/location",parentData:data,parentDataProperty:"location",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
if(data.reasonCode !== undefined){
if(!(validate106(data.reasonCode, {instancePath:instancePath+"/reasonCode",parentData:data,parentDataProperty:"reasonCode",rootData}))){
vErrors = vErrors === null ? validate106.errors : vErrors.concat(validate106.errors);
errors = vErrors.length;
}
}
if(data.reasonReference !== undefined){
if(!(validate97(data.reasonReference, {instancePath:instancePath+"/reasonReference",parentData:data,parentDataProperty:"reasonReference",rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
if(data.insurance !== undefined){
let data50 = data.insurance;
if(Array.isArray(data50)){
if(data50.length < 1){
const err22 = {instancePath:instancePath+"/insurance",schemaPath:"#/properties/insurance/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err22];
}
else {
vErrors.push(err22);
}
errors++;
}
const len7 = data50.length;
for(let i7=0; i7<len7; i7++){
if(!(validate97(data50[i7], {instancePath:instancePath+"/insurance/" + i7,parentData:data50,parentDataProperty:i7,rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
}
else {
const err23 = {instancePath:instancePath+"/insurance",schemaPath:"#/properties/insurance/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err23];
}
else {
vErrors.push(err23);
}
errors++;
}
}
if(data.note !== undefined){
let data52 = data.note;
if(Array.isArray(data52)){
if(data52.length < 1){
const err24 = {instancePath:instancePath+"/note",schemaPath:"#/properties/note/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err24];
}
else {
vErrors.push(err24);
}
errors++;
}
const len8 = data52.length;
for(let i8=0; i8<len8; i8++){
if(!(validate95(data52[i8], {instancePath:instancePath+"/note/" + i8,parentData:data52,parentDataProperty:i8,rootData}))){
vErrors = vErrors === null ? validate95.errors : vErrors.concat(validate95.errors);
errors = vErrors.length;
}
}
}
else {
const err25 = {instancePath:instancePath+"/note",schemaPath:"#/properties/note/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err25];
}
else {
vErrors.push(err25);
}
errors++;
}
}
if(data.relevantHistory !== undefined){
let data54 = data.relevantHistory;
if(Array.isArray(data54)){
if(data54.length < 1){
const err26 = {instancePath:instancePath+"/relevantHistory",schemaPath:"#/properties/relevantHistory/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err26];
}
else {
vErrors.push(err26);
}
errors++;
}
const len9 = data54.length;
for(let i9=0; i9<len9; i9++){
if(!(validate97(data54[i9], {instancePath:instancePath+"/relevantHistory/" + i9,parentData:data54,parentDataProperty:i9,rootData}))){
vErrors = vErrors === null ? validate97.errors : vErrors.concat(validate97.errors);
errors = vErrors.length;
}
}
}
else {
const err27 = {instancePath:instancePath+"/relevantHistory",schemaPath:"#/properties/relevantHistory/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err27];
}
else {
vErrors.push(err27);
}
errors++;
}
}
if(data.restriction !== undefined){
if(!(validate1179(data.restriction, {instancePath:instancePath+"/restriction",parentData:data,parentDataProperty:"restriction",rootData}))){
vErrors = vErrors === null ? validate1179.errors : vErrors.concat(validate1179.errors);
errors = vErrors.length;
}
}
if(data.input !== undefined){
let data57 = data.input;
if(Array.isArray(data57)){
if(data57.length < 1){
const err28 = {instancePath:instancePath+"/input",schemaPath:"#/properties/input/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err28];
}
else {
vErrors.push(err28);
}
errors++;
}
const len10 = data57.length;
for(let i10=0; i10<len10; i10++){
if(!(validate1188(data57[i10], {instancePath:instancePath+"/input/" + i10,parentData:data57,parentDataProperty:i10,rootData}))){
vErrors = vErrors === null ? validate1188.errors : vErrors.concat(validate1188.errors);
errors = vErrors.length;
}
}
}
else {
const err29 = {instancePath:instancePath+"/input",schemaPath:"#/properties/input/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err29];
}
else {
vErrors.push(err29);
}
errors++;
}
}
if(data.output !== undefined){
let data59 = data.output;
if(Array.isArray(data59)){
if(data59.length < 1){
const err30 = {instancePath:instancePath+"/output",schemaPath:"#/properties/output/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err30];
}
else {
vErrors.push(err30);
}
errors++;
}
const len11 = data59.length;
for(let i11=0; i11<len11; i11++){
if(!(validate1243(data59[i11], {instancePath:instancePath+"/output/" + i11,parentData:data59,parentDataProperty:i11,rootData}))){
vErrors = vErrors === null ? validate1243.errors : vErrors.concat(validate1243.errors);
errors = vErrors.length;
}
}
}
else {
const err31 = {instancePath:instancePath+"/output",schemaPath:"#/properties/output/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err31];
}
else {
vErrors.push(err31);
}
errors++;
}
}
}
else {
const err32 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err32];
}
else {
vErrors.push(err32);
}
errors++;
}
validate1137.errors = vErrors;
return errors === 0;
}


function validate503(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.resourceType === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "resourceType"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
const tag0 = data.resourceType;
if(typeof tag0 == "string"){
if(tag0 === "Procedure"){
if(!(validate504(data, {instancePath,parentData,parentDataProperty,rootData}))){
vErrors = vErrors === null ? validate504.errors : vErrors.concat(validate504.errors);
errors = vErrors.length;
}
}
else if(tag0 === "Condition"){
if(!(validate566(data, {instancePath,parentData,parentDataProperty,rootData}))){
vErrors = vErrors === null ? validate566.errors : vErrors.concat(validate566.errors);
errors = vErrors.length;
}
}
else if(tag0 === "Observation"){
if(!(validate615(data, {instancePath,parentData,parentDataProperty,rootData}))){
vErrors = vErrors === null ? validate615.errors : vErrors.concat(validate615.errors);
errors = vErrors.length;
}
}
else if(tag0 === "Specimen"){
if(!(validate693(data, {instancePath,parentData,parentDataProperty,rootData}))){
vErrors = vErrors === null ? validate693.errors : vErrors.concat(validate693.errors);
errors = vErrors.length;
}
}
else if(tag0 === "ServiceRequest"){
if(!(validate752(data, {instancePath,parentData,parentDataProperty,rootData}))){
vErrors = vErrors === null ? validate752.errors : vErrors.concat(validate752.errors);
errors = vErrors.length;
}
}
else if(tag0 === "DiagnosticReport"){
if(!(validate804(data, {instancePath,parentData,parentDataProperty,rootData}))){
vErrors = vErrors === null ? validate804.errors : vErrors.concat(validate804.errors);
errors = vErrors.length;
}
}
else if(tag0 === "Device"){
if(!(validate842(data, {instancePath,parentData,parentDataProperty,rootData}))){
vErrors = vErrors === null ? validate842.errors : vErrors.concat(validate842.errors);
errors = vErrors.length;
}
}
else if(tag0 === "MedicationAdministration"){
if(!(validate931(data, {instancePath,parentData,parentDataProperty,rootData}))){
vErrors = vErrors === null ? validate931.errors : vErrors.concat(validate931.errors);
errors = vErrors.length;
}
}
else if(tag0 === "MedicationStatement"){
if(!(validate981(data, {instancePath,parentData,parentDataProperty,rootData}))){
vErrors = vErrors === null ? validate981.errors : vErrors.concat(validate981.errors);
errors = vErrors.length;
}
}
else if(tag0 === "Media"){
if(!(validate1011(data, {instancePath,parentData,parentDataProperty,rootData}))){
vErrors = vErrors === null ? validate1011.errors : vErrors.concat(validate1011.errors);
errors = vErrors.length;
}
}
else if(tag0 === "Provenance"){
if(!(validate1050(data, {instancePath,parentData,parentDataProperty,rootData}))){
vErrors = vErrors === null ? validate1050.errors : vErrors.concat(validate1050.errors);
errors = vErrors.length;
}
}
else if(tag0 === "Appointment"){
if(!(validate1088(data, {instancePath,parentData,parentDataProperty,rootData}))){
vErrors = vErrors === null ? validate1088.errors : vErrors.concat(validate1088.errors);
errors = vErrors.length;
}
}
else if(tag0 === "Task"){
if(!(validate1137(data, {instancePath,parentData,parentDataProperty,rootData}))){
vErrors = vErrors === null ? validate1137.errors : vErrors.concat(validate1137.errors);
errors = vErrors.length;
}
}
else {
const err1 = {instancePath,schemaPath:"#/discriminator",keyword:"discriminator",params:{error: "mapping", tag: "resourceType", tagValue: tag0}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
else {
const err2 = {instancePath,schemaPath:"#/discriminator",keyword:"discriminator",params:{error: "tag", tag: "resourceType", tagValue: tag0}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
else {
const err3 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
validate503.errors = vErrors;
return errors === 0;
}

const schema103 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"mode":{"enum":["match","include","outcome"]},"_mode":{"$ref":"#/definitions/Element"},"score":{"$ref":"#/definitions/decimal"},"_score":{"$ref":"#/definitions/Element"}},"additionalProperties":false};

function validate1312(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
for(const key0 in data){
if(!(((((((key0 === "id") || (key0 === "extension")) || (key0 === "modifierExtension")) || (key0 === "mode")) || (key0 === "_mode")) || (key0 === "score")) || (key0 === "_score"))){
const err0 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err1 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(validate28(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err2 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.modifierExtension !== undefined){
let data3 = data.modifierExtension;
if(Array.isArray(data3)){
if(data3.length < 1){
const err3 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
const len1 = data3.length;
for(let i1=0; i1<len1; i1++){
if(!(validate28(data3[i1], {instancePath:instancePath+"/modifierExtension/" + i1,parentData:data3,parentDataProperty:i1,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err4 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.mode !== undefined){
let data5 = data.mode;
if(!(((data5 === "match") || (data5 === "include")) || (data5 === "outcome"))){
const err5 = {instancePath:instancePath+"/mode",schemaPath:"#/properties/mode/enum",keyword:"enum",params:{allowedValues: schema103.properties.mode.enum}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
if(data._mode !== undefined){
if(!(validate32(data._mode, {instancePath:instancePath+"/_mode",parentData:data,parentDataProperty:"_mode",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.score !== undefined){
if(!(validate83(data.score, {instancePath:instancePath+"/score",parentData:data,parentDataProperty:"score",rootData}))){
vErrors = vErrors === null ? validate83.errors : vErrors.concat(validate83.errors);
errors = vErrors.length;
}
}
if(data._score !== undefined){
if(!(validate32(data._score, {instancePath:instancePath+"/_score",parentData:data,parentDataProperty:"_score",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
}
else {
const err6 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
validate1312.errors = vErrors;
return errors === 0;
}

const schema104 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"method":{"enum":["GET","HEAD","POST","PUT","DELETE","PATCH"]},"_method":{"$ref":"#/definitions/Element"},"url":{"$ref":"#/definitions/uri"},"_url":{"$ref":"#/definitions/Element"},"ifNoneMatch":{"$ref":"#/definitions/string"},"_ifNoneMatch":{"$ref":"#/definitions/Element"},"ifModifiedSince":{"$ref":"#/definitions/instant"},"_ifModifiedSince":{"$ref":"#/definitions/Element"},"ifMatch":{"$ref":"#/definitions/string"},"_ifMatch":{"$ref":"#/definitions/Element"},"ifNoneExist":{"$ref":"#/definitions/string"},"_ifNoneExist":{"$ref":"#/definitions/Element"}},"required":["method","url"],"additionalProperties":false};

function validate1320(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.method === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "method"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.url === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "url"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
for(const key0 in data){
if(!(func2.call(schema104.properties, key0))){
const err2 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err3 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(validate28(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err4 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.modifierExtension !== undefined){
let data3 = data.modifierExtension;
if(Array.isArray(data3)){
if(data3.length < 1){
const err5 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
const len1 = data3.length;
for(let i1=0; i1<len1; i1++){
if(!(validate28(data3[i1], {instancePath:instancePath+"/modifierExtension/" + i1,parentData:data3,parentDataProperty:i1,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err6 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
if(data.method !== undefined){
let data5 = data.method;
if(!((((((data5 === "GET") || (data5 === "HEAD")) || (data5 === "POST")) || (data5 === "PUT")) || (data5 === "DELETE")) || (data5 === "PATCH"))){
const err7 = {instancePath:instancePath+"/method",schemaPath:"#/properties/method/enum",keyword:"enum",params:{allowedValues: schema104.properties.method.enum}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
}
if(data._method !== undefined){
if(!(validate32(data._method, {instancePath:instancePath+"/_method",parentData:data,parentDataProperty:"_method",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.url !== undefined){
if(!(validate30(data.url, {instancePath:instancePath+"/url",parentData:data,parentDataProperty:"url",rootData}))){
vErrors = vErrors === null ? validate30.errors : vErrors.concat(validate30.errors);
errors = vErrors.length;
}
}
if(data._url !== undefined){
if(!(validate32(data._url, {instancePath:instancePath+"/_url",parentData:data,parentDataProperty:"_url",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.ifNoneMatch !== undefined){
if(!(validate26(data.ifNoneMatch, {instancePath:instancePath+"/ifNoneMatch",parentData:data,parentDataProperty:"ifNoneMatch",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._ifNoneMatch !== undefined){
if(!(validate32(data._ifNoneMatch, {instancePath:instancePath+"/_ifNoneMatch",parentData:data,parentDataProperty:"_ifNoneMatch",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.ifModifiedSince !== undefined){
if(!(validate278(data.ifModifiedSince, {instancePath:instancePath+"/ifModifiedSince",parentData:data,parentDataProperty:"ifModifiedSince",rootData}))){
vErrors = vErrors === null ? validate278.errors : vErrors.concat(validate278.errors);
errors = vErrors.length;
}
}
if(data._ifModifiedSince !== undefined){
if(!(validate32(data._ifModifiedSince, {instancePath:instancePath+"/_ifModifiedSince",parentData:data,parentDataProperty:"_ifModifiedSince",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.ifMatch !== undefined){
if(!(validate26(data.ifMatch, {instancePath:instancePath+"/ifMatch",parentData:data,parentDataProperty:"ifMatch",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._ifMatch !== undefined){
if(!(validate32(data._ifMatch, {instancePath:instancePath+"/_ifMatch",parentData:data,parentDataProperty:"_ifMatch",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.ifNoneExist !== undefined){
if(!(validate26(data.ifNoneExist, {instancePath:instancePath+"/ifNoneExist",parentData:data,parentDataProperty:"ifNoneExist",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._ifNoneExist !== undefined){
if(!(validate32(data._ifNoneExist, {instancePath:instancePath+"/_ifNoneExist",parentData:data,parentDataProperty:"_ifNoneExist",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
}
else {
const err8 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
validate1320.errors = vErrors;
return errors === 0;
}

const schema105 = {"type":"object","properties":{"id":{"$ref":"#/definitions/string"},"extension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"modifierExtension":{"type":"array","minItems":1,"items":{"$ref":"#/definitions/Extension"}},"status":{"$ref":"#/definitions/string"},"_status":{"$ref":"#/definitions/Element"},"location":{"$ref":"#/definitions/uri"},"_location":{"$ref":"#/definitions/Element"},"etag":{"$ref":"#/definitions/string"},"_etag":{"$ref":"#/definitions/Element"},"lastModified":{"$ref":"#/definitions/instant"},"_lastModified":{"$ref":"#/definitions/Element"},"outcome":{"$ref":"#/definitions/ResourceList"}},"required":["status"],"additionalProperties":false};

function validate1336(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.status === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "status"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
for(const key0 in data){
if(!(func2.call(schema105.properties, key0))){
const err1 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err2 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(validate28(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err3 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.modifierExtension !== undefined){
let data3 = data.modifierExtension;
if(Array.isArray(data3)){
if(data3.length < 1){
const err4 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
const len1 = data3.length;
for(let i1=0; i1<len1; i1++){
if(!(validate28(data3[i1], {instancePath:instancePath+"/modifierExtension/" + i1,parentData:data3,parentDataProperty:i1,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err5 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
if(data.status !== undefined){
if(!(validate26(data.status, {instancePath:instancePath+"/status",parentData:data,parentDataProperty:"status",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._status !== undefined){
if(!(validate32(data._status, {instancePath:instancePath+"/_status",parentData:data,parentDataProperty:"_status",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.location !== undefined){
if(!(validate30(data.location, {instancePath:instancePath+"/location",parentData:data,parentDataProperty:"location",rootData}))){
vErrors = vErrors === null ? validate30.errors : vErrors.concat(validate30.errors);
errors = vErrors.length;
}
}
if(data._location !== undefined){
if(!(validate32(data._location, {instancePath:instancePath+"/_location",parentData:data,parentDataProperty:"_location",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.etag !== undefined){
if(!(validate26(data.etag, {instancePath:instancePath+"/etag",parentData:data,parentDataProperty:"etag",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data._etag !== undefined){
if(!(validate32(data._etag, {instancePath:instancePath+"/_etag",parentData:data,parentDataProperty:"_etag",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.lastModified !== undefined){
if(!(validate278(data.lastModified, {instancePath:instancePath+"/lastModified",parentData:data,parentDataProperty:"lastModified",rootData}))){
vErrors = vErrors === null ? validate278.errors : vErrors.concat(validate278.errors);
errors = vErrors.length;
}
}
if(data._lastModified !== undefined){
if(!(validate32(data._lastModified, {instancePath:instancePath+"/_lastModified",parentData:data,parentDataProperty:"_lastModified",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.outcome !== undefined){
if(!(validate503(data.outcome, {instancePath:instancePath+"/outcome",parentData:data,parentDataProperty:"outcome",rootData}))){
vErrors = vErrors === null ? validate503.errors : vErrors.concat(validate503.errors);
errors = vErrors.length;
}
}
}
else {
const err6 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
validate1336.errors = vErrors;
return errors === 0;
}


function validate496(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
for(const key0 in data){
if(!(func2.call(schema63.properties, key0))){
const err0 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate26(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate26.errors : vErrors.concat(validate26.errors);
errors = vErrors.length;
}
}
if(data.extension !== undefined){
let data1 = data.extension;
if(Array.isArray(data1)){
if(data1.length < 1){
const err1 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
if(!(validate28(data1[i0], {instancePath:instancePath+"/extension/" + i0,parentData:data1,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err2 = {instancePath:instancePath+"/extension",schemaPath:"#/properties/extension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.modifierExtension !== undefined){
let data3 = data.modifierExtension;
if(Array.isArray(data3)){
if(data3.length < 1){
const err3 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
const len1 = data3.length;
for(let i1=0; i1<len1; i1++){
if(!(validate28(data3[i1], {instancePath:instancePath+"/modifierExtension/" + i1,parentData:data3,parentDataProperty:i1,rootData}))){
vErrors = vErrors === null ? validate28.errors : vErrors.concat(validate28.errors);
errors = vErrors.length;
}
}
}
else {
const err4 = {instancePath:instancePath+"/modifierExtension",schemaPath:"#/properties/modifierExtension/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.link !== undefined){
let data5 = data.link;
if(Array.isArray(data5)){
if(data5.length < 1){
const err5 = {instancePath:instancePath+"/link",schemaPath:"#/properties/link/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
const len2 = data5.length;
for(let i2=0; i2<len2; i2++){
if(!(validate487(data5[i2], {instancePath:instancePath+"/link/" + i2,parentData:data5,parentDataProperty:i2,rootData}))){
vErrors = vErrors === null ? validate487.errors : vErrors.concat(validate487.errors);
errors = vErrors.length;
}
}
}
else {
const err6 = {instancePath:instancePath+"/link",schemaPath:"#/properties/link/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
if(data.fullUrl !== undefined){
if(!(validate30(data.fullUrl, {instancePath:instancePath+"/fullUrl",parentData:data,parentDataProperty:"fullUrl",rootData}))){
vErrors = vErrors === null ? validate30.errors : vErrors.concat(validate30.errors);
errors = vErrors.length;
}
}
if(data._fullUrl !== undefined){
if(!(validate32(data._fullUrl, {instancePath:instancePath+"/_fullUrl",parentData:data,parentDataProperty:"_fullUrl",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.resource !== undefined){
if(!(validate503(data.resource, {instancePath:instancePath+"/resource",parentData:data,parentDataProperty:"resource",rootData}))){
vErrors = vErrors === null ? validate503.errors : vErrors.concat(validate503.errors);
errors = vErrors.length;
}
}
if(data.search !== undefined){
if(!(validate1312(data.search, {instancePath:instancePath+"/search",parentData:data,parentDataProperty:"search",rootData}))){
vErrors = vErrors === null ? validate1312.errors : vErrors.concat(validate1312.errors);
errors = vErrors.length;
}
}
if(data.request !== undefined){
if(!(validate1320(data.request, {instancePath:instancePath+"/request",parentData:data,parentDataProperty:"request",rootData}))){
vErrors = vErrors === null ? validate1320.errors : vErrors.concat(validate1320.errors);
errors = vErrors.length;
}
}
if(data.response !== undefined){
if(!(validate1336(data.response, {instancePath:instancePath+"/response",parentData:data,parentDataProperty:"response",rootData}))){
vErrors = vErrors === null ? validate1336.errors : vErrors.concat(validate1336.errors);
errors = vErrors.length;
}
}
}
else {
const err7 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
validate496.errors = vErrors;
return errors === 0;
}


function validate22(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.resourceType === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "resourceType"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.type === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "type"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
for(const key0 in data){
if(!(func2.call(schema7.properties, key0))){
const err2 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.resourceType !== undefined){
if("Bundle" !== data.resourceType){
const err3 = {instancePath:instancePath+"/resourceType",schemaPath:"#/properties/resourceType/const",keyword:"const",params:{allowedValue: "Bundle"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.id !== undefined){
if(!(validate23(data.id, {instancePath:instancePath+"/id",parentData:data,parentDataProperty:"id",rootData}))){
vErrors = vErrors === null ? validate23.errors : vErrors.concat(validate23.errors);
errors = vErrors.length;
}
}
if(data.meta !== undefined){
if(!(validate25(data.meta, {instancePath:instancePath+"/meta",parentData:data,parentDataProperty:"meta",rootData}))){
vErrors = vErrors === null ? validate25.errors : vErrors.concat(validate25.errors);
errors = vErrors.length;
}
}
if(data.implicitRules !== undefined){
if(!(validate30(data.implicitRules, {instancePath:instancePath+"/implicitRules",parentData:data,parentDataProperty:"implicitRules",rootData}))){
vErrors = vErrors === null ? validate30.errors : vErrors.concat(validate30.errors);
errors = vErrors.length;
}
}
if(data._implicitRules !== undefined){
if(!(validate32(data._implicitRules, {instancePath:instancePath+"/_implicitRules",parentData:data,parentDataProperty:"_implicitRules",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.language !== undefined){
if(!(validate91(data.language, {instancePath:instancePath+"/language",parentData:data,parentDataProperty:"language",rootData}))){
vErrors = vErrors === null ? validate91.errors : vErrors.concat(validate91.errors);
errors = vErrors.length;
}
}
if(data._language !== undefined){
if(!(validate32(data._language, {instancePath:instancePath+"/_language",parentData:data,parentDataProperty:"_language",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.identifier !== undefined){
if(!(validate103(data.identifier, {instancePath:instancePath+"/identifier",parentData:data,parentDataProperty:"identifier",rootData}))){
vErrors = vErrors === null ? validate103.errors : vErrors.concat(validate103.errors);
errors = vErrors.length;
}
}
if(data.type !== undefined){
let data8 = data.type;
if(!(((((((((data8 === "document") || (data8 === "message")) || (data8 === "transaction")) || (data8 === "transaction-response")) || (data8 === "batch")) || (data8 === "batch-response")) || (data8 === "history")) || (data8 === "searchset")) || (data8 === "collection"))){
const err4 = {instancePath:instancePath+"/type",schemaPath:"#/properties/type/enum",keyword:"enum",params:{allowedValues: schema7.properties.type.enum}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data._type !== undefined){
if(!(validate32(data._type, {instancePath:instancePath+"/_type",parentData:data,parentDataProperty:"_type",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.timestamp !== undefined){
if(!(validate278(data.timestamp, {instancePath:instancePath+"/timestamp",parentData:data,parentDataProperty:"timestamp",rootData}))){
vErrors = vErrors === null ? validate278.errors : vErrors.concat(validate278.errors);
errors = vErrors.length;
}
}
if(data._timestamp !== undefined){
if(!(validate32(data._timestamp, {instancePath:instancePath+"/_timestamp",parentData:data,parentDataProperty:"_timestamp",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.total !== undefined){
if(!(validate153(data.total, {instancePath:instancePath+"/total",parentData:data,parentDataProperty:"total",rootData}))){
vErrors = vErrors === null ? validate153.errors : vErrors.concat(validate153.errors);
errors = vErrors.length;
}
}
if(data._total !== undefined){
if(!(validate32(data._total, {instancePath:instancePath+"/_total",parentData:data,parentDataProperty:"_total",rootData}))){
vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors);
errors = vErrors.length;
}
}
if(data.link !== undefined){
let data14 = data.link;
if(Array.isArray(data14)){
if(data14.length < 1){
const err5 = {instancePath:instancePath+"/link",schemaPath:"#/properties/link/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
const len0 = data14.length;
for(let i0=0; i0<len0; i0++){
if(!(validate487(data14[i0], {instancePath:instancePath+"/link/" + i0,parentData:data14,parentDataProperty:i0,rootData}))){
vErrors = vErrors === null ? validate487.errors : vErrors.concat(validate487.errors);
errors = vErrors.length;
}
}
}
else {
const err6 = {instancePath:instancePath+"/link",schemaPath:"#/properties/link/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
if(data.entry !== undefined){
let data16 = data.entry;
if(Array.isArray(data16)){
if(data16.length < 1){
const err7 = {instancePath:instancePath+"/entry",schemaPath:"#/properties/entry/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
const len1 = data16.length;
for(let i1=0; i1<len1; i1++){
if(!(validate496(data16[i1], {instancePath:instancePath+"/entry/" + i1,parentData:data16,parentDataProperty:i1,rootData}))){
vErrors = vErrors === null ? validate496.errors : vErrors.concat(validate496.errors);
errors = vErrors.length;
}
}
}
else {
const err8 = {instancePath:instancePath+"/entry",schemaPath:"#/properties/entry/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
}
if(data.signature !== undefined){
if(!(validate275(data.signature, {instancePath:instancePath+"/signature",parentData:data,parentDataProperty:"signature",rootData}))){
vErrors = vErrors === null ? validate275.errors : vErrors.concat(validate275.errors);
errors = vErrors.length;
}
}
}
else {
const err9 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
validate22.errors = vErrors;
return errors === 0;
}


function validate21(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(!(validate22(data, {instancePath,parentData,parentDataProperty,rootData}))){
vErrors = vErrors === null ? validate22.errors : vErrors.concat(validate22.errors);
errors = vErrors.length;
}
validate21.errors = vErrors;
return errors === 0;
}
