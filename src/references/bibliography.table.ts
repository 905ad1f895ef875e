/** Every work that a rule rests on, once. */
export const BIBLIOGRAPHY = {
  esgeEsd2022: {
    citation: 'Pimentel-Nunes P et al. Endoscopy 2022;54:591-622, doi 10.1055/a-1811-7025',
    about: 'European guideline on endoscopic submucosal dissection, update 2022',
  },
  esgeEsd2015: {
    citation:
      'European guideline of 2015, as quoted in World J Gastrointest Surg 2021;13:1180 and PMC6314977',
    about: 'criteria of the edition before',
  },
  jgesEsd2021: {
    citation: 'Ono H et al. Dig Endosc 2021;33:4-20, doi 10.1111/den.13883',
    about: 'Japanese guideline on endoscopic resection of early gastric cancer, 2nd edition',
  },
  jgca2021: {
    citation:
      'Japanese Gastric Cancer Treatment Guidelines 2021 (6th edition), Gastric Cancer 2023;26:1-25, doi 10.1007/s10120-022-01331-8',
    about: 'endoscopic curability of gastric cancer',
  },
  jgca2025: {
    citation: 'Japanese Gastric Cancer Treatment Guidelines, 7th edition, March 2025',
    about: 'the edition after; its text was not read',
  },
  mapsIii2025: {
    citation: 'Endoscopy 2025;57:504-554, doi 10.1055/a-2529-5025',
    about: 'European guideline on precancerous conditions and lesions of the stomach, 3rd edition',
  },
  jsccr2019: {
    citation: 'Hashiguchi Y et al. Int J Clin Oncol 2020;25:1-42, doi 10.1007/s10147-019-01485-z',
    about: 'Japanese guideline on colorectal cancer 2019',
  },
  jgesColorectal: {
    citation:
      'Japanese guideline on colorectal endoscopic submucosal dissection and mucosal resection, 2nd edition, Dig Endosc 2020, doi 10.1111/den.13545',
    about: 'conditions of cure, as transcribed',
  },
  rEsd2023: {
    citation: 'Endoscopy 2023, doi 10.1055/a-1960-3552',
    about: 'recurrence after a positive horizontal margin, 928 colorectal dissections',
  },
  jgesJes2020: {
    citation: 'Ishihara R et al. Dig Endosc 2020;32:452-493',
    about: 'Japanese guideline on endoscopic resection of oesophageal cancer',
  },
  jes2022: {
    citation:
      'Japan Esophageal Society, esophageal cancer practice guidelines 2022, Esophagus 2023;20:343',
    about: 'stricture and further treatment after oesophageal resection',
  },
  yamashina2013: {
    citation: 'Yamashina T et al. Am J Gastroenterol 2013;108:544',
    about: 'metastasis by depth of squamous cancer of the oesophagus',
  },
  korea2020: {
    citation: 'Park CH et al. Clin Endosc 2020;53:142-166',
    about: 'Korean guideline on endoscopic resection of early gastrointestinal cancer',
  },
  itbcc2016: {
    citation: 'ITBCC 2016 and JSCCR, as quoted in J Clin Oncol 2019;37:1886; Virchows Arch 2021',
    about: 'grades of tumour budding',
  },
  hatta2017: {
    citation: 'Hatta W et al. Am J Gastroenterol 2017;112:874-881',
    about: 'eCura score: nodal metastasis after non-curative resection of gastric cancer',
  },
  hatta2021: {
    citation: 'Hatta W et al. Gut 2021;70:476-484',
    about: 'BEST-J score: bleeding after dissection of early gastric cancer',
  },
  bestJCalculator: {
    citation:
      'Calculator of the BEST-J score by the authors of Gut 2021;70:476-484, and two public copies that agree',
    about: 'weights and use of the items of the score',
  },
  bestJEurope2024: {
    citation: 'Dig Dis Sci 2024, European validation of the BEST-J score, n = 161',
    about: 'bleeding within 28 days',
  },
  wjg2014: {
    citation: 'World J Gastroenterol 2014;20:1839',
    about: 'bleeding after colorectal dissection, from 6 hours to 30 days',
  },
  albouys2024: {
    citation: 'Albouys J et al. Endoscopy 2024;56:110-118, doi 10.1055/a-2189-0807',
    about: 'Limoges score: bleeding after colorectal dissection',
  },
  korea2019: {
    citation: 'Endoscopy 2019, meeting abstract, doi 10.1055/s-0039-1681689',
    about: 'bleeding after colorectal dissection, multicentre',
  },
  li2021: {
    citation: 'Li B et al. Gastrointest Endosc 2021;94:133-144',
    about: 'difficulty of colorectal dissection',
  },
  li2023: {
    citation: 'Gastrointest Endosc 2023, doi 10.1016/j.gie.2023.10.037',
    about: 'difficulty of colorectal dissection, update',
  },
  matsumoto2019: {
    citation: 'Matsumoto S et al. PLoS One 2019',
    about: 'difficulty of colorectal dissection before the procedure',
  },
  iacopini2017: {
    citation: 'Iacopini F et al., PMC5595579',
    about: 'what makes a dissection a difficult one',
  },
  kim2014: {
    citation: 'Kim GH et al. Clin Endosc 2014;47:516',
    about: 'stricture after resection in oesophagus and stomach',
  },
  agree2022: {
    citation: 'Nass KJ et al. Gastrointest Endosc 2022;95:1078-1085',
    about: 'AGREE: severity of adverse events in endoscopy',
  },
  clavienDindo2004: {
    citation: 'Dindo D, Demartines N, Clavien PA. Ann Surg 2004;240:205-213',
    about: 'severity of surgical complications',
  },
  bbps2009: {
    citation: 'Lai EJ et al. Gastrointest Endosc 2009;69:620-625',
    about: 'Boston bowel preparation scale',
  },
  burgess2017: {
    citation: 'Burgess NG et al. Gut 2017;66:1779-1789',
    about: 'Sydney classification of deep mural injury',
  },
  matsumotoA2010: {
    citation: 'Matsumoto A et al. Scand J Gastroenterol 2010;45:1329',
    about: 'grades of submucosal fibrosis',
  },
  newcombe1998: {
    citation: 'Newcombe RG. Stat Med 1998;17:857-872',
    about: 'intervals of a single proportion',
  },
  clopperPearson1934: {
    citation: 'Clopper CJ, Pearson ES. Biometrika 1934;26:404-413',
    about: 'exact interval of a single proportion',
  },
  manski1989: {
    citation: 'Manski CF. J Hum Resour 1989;24:343-360',
    about: 'what can be said of a share of which some are not observed',
  },
  horowitzManski2000: {
    citation: 'Horowitz JL, Manski CF. J Am Stat Assoc 2000;95:77-84',
    about: 'bounds where outcomes are missing',
  },
  funnelSmall2012: {
    citation: 'BMC Med Res Methodol 2012;12:98',
    about: 'control limits of funnel plots at low expected counts',
  },
  endoscopyTraining: {
    citation: 'PMC6470078; training in endoscopy',
    about: 'rates of a sequential test of a learning curve',
  },
  gastrostomyTraining: {
    citation: 'PMC4188705; training in gastrostomy',
    about: 'rates of a sequential test of a learning curve',
  },
  cusumPrograms: {
    citation:
      'Wald A. Ann Math Stat 1945;16:117-186, as two independent public programs for learning curves in procedures write it',
    about: 'sequential test of a learning curve',
  },
  spiegelhalter2005: {
    citation: 'Spiegelhalter DJ. Stat Med 2005;24:1185-1202',
    about: 'funnel plots',
  },
  esgeBarrett2023: {
    citation: 'Weusten B et al. Endoscopy 2023;55:1124-1146, doi 10.1055/a-2176-2440',
    about: 'European guideline on Barrett oesophagus',
  },
  esgePolypectomy2020: {
    citation: 'Hassan C et al. Endoscopy 2020;52:687-700, doi 10.1055/a-1185-3109',
    about: 'European guideline on surveillance after polypectomy, update 2020',
  },
  esgeEsdo2019: {
    citation: 'Endoscopy 2019;51:266-277, doi 10.1055/a-0831-2522',
    about: 'European guideline on endoscopic surveillance after colorectal cancer',
  },
  bsg2020: {
    citation: 'Rutter MD et al. Gut 2020;69:201-223',
    about: 'British guideline on surveillance after polypectomy and cancer resection, 2019',
  },
  usmstf2020: {
    citation: 'Gupta S et al. Gastroenterology 2020;158:1131-1153; PMC7389642',
    about: 'recommendations of the US Multi-Society Task Force for follow-up after polypectomy',
  },
  esgeDuodenum2021: {
    citation: 'Endoscopy 2021;53:522-534, doi 10.1055/a-1442-2395',
    about: 'European guideline on superficial non-ampullary duodenal tumours',
  },
  mapsIi2019: {
    citation: 'MAPS II, Endoscopy 2019',
    about: 'European guideline on precancerous conditions of the stomach, 2nd edition',
  },
  oesophagusReview2024: {
    citation: 'Clin Endosc 2024;57:5',
    about: 'review of follow-up after resection of squamous cancer of the oesophagus',
  },
  gastricAdenomaSurvey2025: {
    citation: 'Survey of 130 gastroenterologists in Korea, 2025 (journal not noted)',
    about: 'follow-up after resection of low-grade adenomas of the stomach, as practised',
  },
  helicobacterConsensus: {
    citation: 'Liou JM et al. Gut 2020;69:2093-2112, doi 10.1136/gutjnl-2020-322368',
    about: 'consensus on Helicobacter pylori and the prevention of gastric cancer',
  },
  secondLook: {
    citation: 'Dig Endosc 2015;27:279; Chin J GI Surg 2019',
    about: 'second endoscopy after dissection in the stomach: three randomised trials',
  },
  tubeArea2016: {
    citation: 'Gut 2016;65 suppl 1:A173',
    about: 'area of an oesophageal dissection from length and circumference',
  },
  esgeCurriculum2019: {
    citation: 'Pimentel-Nunes P et al. Endoscopy 2019;51:980-992',
    about: 'European curriculum for training in endoscopic submucosal dissection',
  },
  bsgEsge2016: {
    citation: 'Veitch AM et al. Endoscopy 2016;48:385-402; Gut 2016;65:374-389',
    about: 'endoscopy under antiplatelet and anticoagulant drugs, British and European guideline',
  },
  bsgEsge2021: {
    citation: 'Veitch AM et al. Endoscopy 2021;53:947-969',
    about: 'endoscopy under antiplatelet and anticoagulant drugs, update 2021',
  },
  asiaPacific2018: {
    citation: 'Chan FKL et al. Gut 2018;67:405-417',
    about: 'endoscopy under antithrombotic drugs, Asia-Pacific working group guideline',
  },
  colorectalLevel2020: {
    citation: 'PMC7411630, abstract; 590 colorectal dissections',
    about: 'what an expert of colorectal dissection reaches, and what trainees do',
  },
  earlyCancerGroup: {
    citation: 'Page of a European group on early cancer, its text cut; no source in print',
    about: 'rates that a unit should reach',
  },
  gePort2023: {
    citation: 'GE Port J Gastroenterol 2023',
    about: 'rectal dissection with and without severe fibrosis',
  },
  eio2024: {
    citation: 'Endosc Int Open 2024;12:E905',
    about: 'learning curve of an untutored operator over 515 dissections',
  },
  gastricTwoOperators2025: {
    citation: 'Ther Adv Gastroenterol 2025; two operators, 1491 gastric dissections',
    about: 'learning curve of the speed of gastric dissection',
  },
  jeonHh: {
    citation: 'Jeon HH et al., journal and year not noted: no source to look up',
    about: 'learning curve of colorectal dissection',
  },
  lowVolume2021: {
    citation: 'Ann Gastroenterol 2021',
    about: 'learning curve by the prevalence of lesions, at low volume',
  },
  kaplanMeier1958: {
    citation: 'Kaplan EL, Meier P. J Am Stat Assoc 1958;53:457-481',
    about: 'share without an event where the watching ends at different times',
  },
  greenwood1926: {
    citation: 'Greenwood M. Reports on Public Health and Medical Subjects 1926;33:1-26',
    about: 'standard error of that share',
  },
  kalbfleischPrentice1980: {
    citation: 'Kalbfleisch JD, Prentice RL. The Statistical Analysis of Failure Time Data. 1980',
    about: 'interval of that share on the scale of log(-log)',
  },
  esdPractice: {
    citation: 'Common practice in endoscopic submucosal dissection, no source',
    about: 'formulae and terms in general use',
  },
} as const satisfies Record<string, { readonly citation: string; readonly about: string }>;

export type WorkKey = keyof typeof BIBLIOGRAPHY;
