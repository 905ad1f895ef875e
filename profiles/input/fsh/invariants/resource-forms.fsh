Invariant: dr-r-obs-1
Description: "The Observation is part of a Procedure, by a literal reference"
Severity: #error
Expression: "partOf.reference.exists()"

Invariant: dr-r-obs-3
Description: "A non-cancelled Observation has a value, a component, a member or a reason for absence"
Severity: #error
Expression: "status in ('preliminary' | 'final' | 'amended' | 'corrected') implies (value.exists() or component.exists() or hasMember.exists() or dataAbsentReason.exists())"

Invariant: dr-r-obs-4
Description: "A component has a value or a reason for absence, never both"
Severity: #error
Expression: "component.all(value.exists() xor dataAbsentReason.exists())"

Invariant: dr-r-obs-5
Description: "A group (hasMember) carries no components"
Severity: #error
Expression: "hasMember.empty() or component.empty()"

Invariant: dr-r-obs-6
Description: "Values are of searchable types only: no boolean, integer or string"
Severity: #error
Expression: "value.combine(component.value).all($this.is(CodeableConcept) or $this.is(Quantity) or $this.is(dateTime) or $this.is(Period))"

Invariant: dr-r-obs-9
Description: "A valid computed Observation names its inputs or its rule"
Severity: #error
Expression: "status = 'entered-in-error' or derivedFrom.exists() or method.exists()"

Invariant: dr-r-rul-1
Description: "The method is one rule of this package, with the version of the rule"
Severity: #error
Expression: "method.coding.where(system = 'https://dissection-records.example/fhir/CodeSystem/rule').count() = 1 and method.coding.where(system = 'https://dissection-records.example/fhir/CodeSystem/rule').version.exists()"

Invariant: dr-r-cur-1
Description: "A verdict is one class and one coarse group; what is indeterminate is no class"
Severity: #error
Expression: "value.empty() or (value.ofType(CodeableConcept).coding.where(system = 'https://dissection-records.example/fhir/CodeSystem/curability' and code != 'indeterminate').count() = 1 and value.ofType(CodeableConcept).coding.where(system = 'https://dissection-records.example/fhir/CodeSystem/curability-group').count() = 1)"

Invariant: dr-r-cur-2
Description: "A verdict whose answer is only awaited is not called final"
Severity: #error
Expression: "dataAbsentReason.coding.where(code = 'temp-unknown').exists() implies status in ('registered' | 'preliminary' | 'entered-in-error')"

Invariant: dr-r-cur-3
Description: "A component is a reason, by a code of the reasons of this package"
Severity: #error
Expression: "component.all(code.coding.where(system = 'https://dissection-records.example/fhir/CodeSystem/esd-observation' and code = 'curability-reason').exists() and value.ofType(CodeableConcept).coding.where(system = 'https://dissection-records.example/fhir/CodeSystem/curability-reason').exists())"

Invariant: dr-r-cur-4
Description: "Reasons stand beside a class only"
Severity: #error
Expression: "value.exists() or component.empty()"

Invariant: dr-r-sco-1
Description: "A total is a whole number of points, not below zero"
Severity: #error
Expression: "value.empty() or (value.ofType(Quantity).code = '{score}' and value.ofType(Quantity).value >= 0 and value.ofType(Quantity).value mod 1 = 0)"

Invariant: dr-r-sco-2
Description: "A group and a published rate stand beside a total only"
Severity: #error
Expression: "value.exists() or (interpretation.empty() and component.empty())"

Invariant: dr-r-sco-3
Description: "A published rate lies between the limits of its interval"
Severity: #error
Expression: "component.where(code.coding.code = 'published-rate-lower').empty() or (component.where(code.coding.code = 'published-rate-lower').value.ofType(Quantity).value <= component.where(code.coding.code = 'published-rate').value.ofType(Quantity).value and component.where(code.coding.code = 'published-rate').value.ofType(Quantity).value <= component.where(code.coding.code = 'published-rate-upper').value.ofType(Quantity).value)"

Invariant: dr-r-pro-1
Description: "A completed Procedure starts before it ends"
Severity: #error
Expression: "status = 'completed' implies (performed.ofType(Period).start < performed.ofType(Period).end)"

Invariant: dr-r-pro-6
Description: "A Procedure that was not done gives a reason"
Severity: #error
Expression: "status = 'not-done' implies statusReason.exists()"

Invariant: dr-r-dr-2
Description: "A final, amended, corrected or appended report has issued, performer and at least one result"
Severity: #error
Expression: "status in ('final' | 'amended' | 'corrected' | 'appended') implies (issued.exists() and performer.exists() and result.exists())"

Invariant: dr-r-dr-8
Description: "The resource names the Procedure it belongs to by event-partOf"
Severity: #error
Expression: "extension('http://hl7.org/fhir/StructureDefinition/event-partOf').value.ofType(Reference).reference.exists()"

Invariant: dr-r-spm-4
Description: "An accession number has system and value"
Severity: #error
Expression: "accessionIdentifier.exists() implies (accessionIdentifier.system.exists() and accessionIdentifier.value.exists())"

Invariant: dr-r-con-2
Description: "A Condition entered in error has no clinical status; every other has one"
Severity: #error
Expression: "verificationStatus.coding.where(code = 'entered-in-error').exists() xor clinicalStatus.exists()"

Invariant: dr-r-prv-1
Description: "Provenance has an assembler and a source"
Severity: #error
Expression: "agent.where(type.coding.where(code = 'assembler').exists()).exists() and entity.where(role = 'source').exists()"

Invariant: dr-r-app-1
Description: "A proposed Appointment has no start and end, names its request and the period that is asked for"
Severity: #error
Expression: "status = 'proposed' implies (start.empty() and end.empty() and requestedPeriod.exists() and basedOn.exists())"

Invariant: dr-r-app-2
Description: "One participant of an Appointment is the patient"
Severity: #error
Expression: "participant.actor.where(type = 'Patient').count() = 1"
