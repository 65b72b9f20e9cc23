import type { SourceRow } from "./source.ts";

/**
 * Works behind the measures in which a gain would be seen and behind teaching a person with aphasia or a family. A title
 * says in plain words what the work gives, unless it was seen as printed.
 */
export const TAUGHT_SOURCES = {
  "collin-wade-1990": { authors: "Collin C, Wade D", year: 1990, title: "Motor impairment after stroke: Motricity Index and Trunk Control Test", where: "Journal of Neurology, Neurosurgery and Psychiatry 53:576-579", seen: "quoted" },
  "benaim-1999": { authors: "Benaim C and others", year: 1999, title: "Postural Assessment Scale for Stroke Patients", where: "Stroke 30:1862-1868", seen: "quoted" },
  "verheyden-2004": { authors: "Verheyden G and others", year: 2004, title: "Trunk Impairment Scale", where: "Clinical Rehabilitation 18:326-334", seen: "quoted" },
  "demeurisse-1980": { authors: "Demeurisse G and others", year: 1980, title: "Motor evaluation of limbs after stroke: Motricity Index", where: "1980; as used by Collin and Wade 1990", seen: "quoted" },
  "muscle-grade-mrc": { authors: "UK Medical Research Council", year: null, title: "Grades of muscle strength from 0 to 5", where: "as printed on sheets of the Motricity Index", seen: "quoted" },
  "fugl-meyer-1975": { authors: "Fugl-Meyer AR and others", year: 1975, title: "Assessment of motor recovery after stroke, arm and leg", where: "Scandinavian Journal of Rehabilitation Medicine 7:13-31", seen: "quoted" },
  "berg-1989": { authors: "Berg K and others", year: 1989, title: "Balance scale for older adults", where: "Physiotherapy Canada 41:304-311", seen: "quoted" },
  "gorman-2010": { authors: "Gorman SL and others", year: 2010, title: "Function in Sitting Test", where: "2010, with change values of 2014; levels recalled", seen: "quoted" },
  "holden-1984": { authors: "Holden MK and others", year: 1984, title: "Categories of help needed to walk", where: "1984; as in Mehrholz and others 2007", seen: "quoted" },
  "moore-2018": { authors: "Moore JL and others", year: 2018, title: "A Core Set of Outcome Measures for Adults With Neurologic Conditions Undergoing Rehabilitation", where: "Journal of Neurologic Physical Therapy 42:174-220; constructs read, the timed tests' names recalled", seen: "quoted" },
  "podsiadlo-1991": { authors: "Podsiadlo D, Richardson S", year: 1991, title: "Timed rise, walk and turn of frail older people", where: "Journal of the American Geriatrics Society 1991", seen: "quoted" },
  "wrisley-2004": { authors: "Wrisley DM and others", year: 2004, title: "Functional Gait Assessment", where: "Physical Therapy 84:906-918", seen: "quoted" },
  "duncan-1990": { authors: "Duncan PW and others", year: 1990, title: "Functional reach as a measure of balance", where: "1990; responsiveness in Weiner and others 1992", seen: "quoted" },
  "springer-2007": { authors: "Springer BA and others", year: 2007, title: "Seconds on one leg by age", where: "Journal of Geriatric Physical Therapy 30:8-15", seen: "memory" },
  "collen-1991": { authors: "Collen FM and others", year: 1991, title: "Rivermead Mobility Index", where: "1991; as on a public register of stroke measures", seen: "quoted" },
  "daley-1999": { authors: "Daley K and others", year: 1999, title: "Stroke Rehabilitation Assessment of Movement", where: "1999; as on a public register of stroke measures", seen: "quoted" },
  "supported-conversation": { authors: "Kagan A", year: null, title: "Supported conversation for adults with aphasia: short sentences, gesture, key words, one thing at a time", where: "as on public teaching copies", seen: "quoted" },
  "teach-back": { authors: "US Agency for Healthcare Research and Quality", year: null, title: "Teach-back: ask to say or show it back after each point", where: "Health Literacy Universal Precautions Toolkit, tool 5; two show-backs on different days are this project's rule", seen: "quoted" },
} as const satisfies Record<string, SourceRow>;
