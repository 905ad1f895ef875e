Invariant: dr-r-out-1
Description: "A rate is told, or why there is none: masked, or nobody to count"
Severity: #error
Expression: "group.combine(group.stratifier.stratum).measureScore.all(value.exists() xor extension.where(url = 'http://hl7.org/fhir/StructureDefinition/data-absent-reason').value.where($this in ('masked' | 'not-applicable')).exists())"

Invariant: dr-r-out-2
Description: "A rate that is masked comes without any count"
Severity: #error
Expression: "group.combine(group.stratifier.stratum).where(measureScore.extension.where(url = 'http://hl7.org/fhir/StructureDefinition/data-absent-reason').where(value = 'masked').exists()).all(population.empty())"

Invariant: dr-r-out-3
Description: "What is not masked has each of its four populations once, with a count"
Severity: #error
Expression: "group.combine(group.stratifier.stratum).where(measureScore.extension.where(url = 'http://hl7.org/fhir/StructureDefinition/data-absent-reason').where(value = 'masked').empty()).all(population.count() = 4 and population.where(code.coding.where(system = 'http://terminology.hl7.org/CodeSystem/measure-population' and code = 'initial-population').exists()).count.count() = 1 and population.where(code.coding.where(system = 'http://terminology.hl7.org/CodeSystem/measure-population' and code = 'denominator').exists()).count.count() = 1 and population.where(code.coding.where(system = 'http://terminology.hl7.org/CodeSystem/measure-population' and code = 'denominator-exclusion').exists()).count.count() = 1 and population.where(code.coding.where(system = 'http://terminology.hl7.org/CodeSystem/measure-population' and code = 'numerator').exists()).count.count() = 1)"

Invariant: dr-r-out-4
Description: "The numerator is among what is left of the denominator, and that among all cases"
Severity: #error
Expression: "group.combine(group.stratifier.stratum).where(population.exists()).all(population.count.all($this >= 0) and population.where(code.coding.where(system = 'http://terminology.hl7.org/CodeSystem/measure-population' and code = 'numerator').exists()).count <= population.where(code.coding.where(system = 'http://terminology.hl7.org/CodeSystem/measure-population' and code = 'denominator').exists()).count - population.where(code.coding.where(system = 'http://terminology.hl7.org/CodeSystem/measure-population' and code = 'denominator-exclusion').exists()).count and population.where(code.coding.where(system = 'http://terminology.hl7.org/CodeSystem/measure-population' and code = 'denominator').exists()).count <= population.where(code.coding.where(system = 'http://terminology.hl7.org/CodeSystem/measure-population' and code = 'initial-population').exists()).count)"

Invariant: dr-r-out-5
Description: "A rate is its numerator over what is left of its denominator, to six decimals; none without any"
Severity: #error
Expression: "group.combine(group.stratifier.stratum).where(population.exists()).all(iif(population.where(code.coding.where(system = 'http://terminology.hl7.org/CodeSystem/measure-population' and code = 'denominator').exists()).count = population.where(code.coding.where(system = 'http://terminology.hl7.org/CodeSystem/measure-population' and code = 'denominator-exclusion').exists()).count, measureScore.value.empty(), (measureScore.value * (population.where(code.coding.where(system = 'http://terminology.hl7.org/CodeSystem/measure-population' and code = 'denominator').exists()).count - population.where(code.coding.where(system = 'http://terminology.hl7.org/CodeSystem/measure-population' and code = 'denominator-exclusion').exists()).count) - population.where(code.coding.where(system = 'http://terminology.hl7.org/CodeSystem/measure-population' and code = 'numerator').exists()).count).abs() <= 0.000001 * (population.where(code.coding.where(system = 'http://terminology.hl7.org/CodeSystem/measure-population' and code = 'denominator').exists()).count - population.where(code.coding.where(system = 'http://terminology.hl7.org/CodeSystem/measure-population' and code = 'denominator-exclusion').exists()).count)))"

Invariant: dr-r-out-6
Description: "A rate lies within its interval, and that within 0 and 1"
Severity: #error
Expression: "group.combine(group.stratifier.stratum).measureScore.where(value.exists()).all(extension.where(url = 'https://dissection-records.example/fhir/StructureDefinition/dr-rate-interval').exists() and extension.where(url = 'https://dissection-records.example/fhir/StructureDefinition/dr-rate-interval').extension.where(url = 'lower').value >= 0 and extension.where(url = 'https://dissection-records.example/fhir/StructureDefinition/dr-rate-interval').extension.where(url = 'lower').value <= value and value <= extension.where(url = 'https://dissection-records.example/fhir/StructureDefinition/dr-rate-interval').extension.where(url = 'upper').value and extension.where(url = 'https://dissection-records.example/fhir/StructureDefinition/dr-rate-interval').extension.where(url = 'upper').value <= 1 and extension.where(url = 'https://dissection-records.example/fhir/StructureDefinition/dr-rate-interval').extension.where(url = 'level').value > 0 and extension.where(url = 'https://dissection-records.example/fhir/StructureDefinition/dr-rate-interval').extension.where(url = 'level').value < 1)"

Invariant: dr-r-out-7
Description: "What is excluded is told apart: outcomes that nobody told, and days that are not over"
Severity: #error
Expression: "group.combine(group.stratifier.stratum).where(population.exists()).all(population.where(code.coding.where(system = 'http://terminology.hl7.org/CodeSystem/measure-population' and code = 'denominator-exclusion').exists()).extension.where(url = 'https://dissection-records.example/fhir/StructureDefinition/dr-not-counted').extension.where(url = 'missing').value + population.where(code.coding.where(system = 'http://terminology.hl7.org/CodeSystem/measure-population' and code = 'denominator-exclusion').exists()).extension.where(url = 'https://dissection-records.example/fhir/StructureDefinition/dr-not-counted').extension.where(url = 'windowOpen').value = population.where(code.coding.where(system = 'http://terminology.hl7.org/CodeSystem/measure-population' and code = 'denominator-exclusion').exists()).count)"

Invariant: dr-r-out-8
Description: "Each indicator is reported once"
Severity: #error
Expression: "group.code.coding.where(system = 'https://dissection-records.example/fhir/CodeSystem/outcome-indicator').code.isDistinct()"

Invariant: dr-r-out-9
Description: "The Measure is named with its version, and the period by its first and last day"
Severity: #error
Expression: "measure.matches('^https://dissection-records[.]example/fhir/Measure/dr-outcomes[|][^|]+$') and (period.start | period.end).all($this.toString().matches('^[0-9]{4}-[0-9]{2}-[0-9]{2}$'))"
