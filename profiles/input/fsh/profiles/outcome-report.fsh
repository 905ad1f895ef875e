Extension: RateInterval
Id: dr-rate-interval
Title: "Interval of a rate"
Description: "Both ends of a confidence interval of a rate, as shares of 0 to 1, with its level and method."
Context: MeasureReport.group.measureScore, MeasureReport.group.stratifier.stratum.measureScore
* insert Published
* extension contains lower 1..1 and upper 1..1 and level 1..1 and method 1..1
* extension[lower].value[x] only decimal
* extension[lower].value[x] 1..1
* extension[upper].value[x] only decimal
* extension[upper].value[x] 1..1
* extension[level].value[x] only decimal
* extension[level].value[x] 1..1
* extension[method].value[x] only Coding
* extension[method].value[x] 1..1
* extension[method].valueCoding from https://dissection-records.example/fhir/ValueSet/interval-method (required)

Extension: NotCounted
Id: dr-not-counted
Title: "Why cases are not counted"
Description: "Of the cases that a denominator excludes: how many have an outcome that nobody told, and how many have days that are not over."
Context: MeasureReport.group.population, MeasureReport.group.stratifier.stratum.population
* insert Published
* extension contains missing 1..1 and windowOpen 1..1
* extension[missing].value[x] only unsignedInt
* extension[missing].value[x] 1..1
* extension[windowOpen].value[x] only unsignedInt
* extension[windowOpen].value[x] 1..1

Profile: OutcomeReport
Parent: MeasureReport
Id: dr-outcome-report
Title: "Outcomes of a unit"
Description: "Rates of one unit over one period, for the unit and for comparison with others: no case can be told from it. A rate whose counts are small is left out, with the reason."
* insert Published
* insert Identified
* type = #summary
* status = #complete
* subject 0..0
* evaluatedResource 0..0
* date 1..1
* reporter 1..1
* reporter.identifier 1..1
* reporter.identifier.system 1..1
* reporter.identifier.value 1..1
* period.start 1..1
* period.end 1..1
* group 1..*
* insert LocalCoding(group.code, outcome-indicator, 1..1)
* group.measureScore 1..1
* group.population.code 1..1
* group.stratifier.stratum.measureScore 1..1
* group.stratifier.stratum.population.code 1..1
* obeys dr-r-out-1
* obeys dr-r-out-2
* obeys dr-r-out-3
* obeys dr-r-out-4
* obeys dr-r-out-5
* obeys dr-r-out-6
* obeys dr-r-out-7
* obeys dr-r-out-8
* obeys dr-r-out-9
