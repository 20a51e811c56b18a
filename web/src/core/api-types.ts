// Made from the records of jackwork.app by ApiTypes; change those, then run it again.
// Lengths in mm with y up, forces in N, angles in degrees.

// What a change puts into a file: words as typed, two numbers are a place.
export type FieldValue = string | number | boolean | FieldValue[] | { [field: string]: FieldValue };

export type Pair = [number, number];

export interface Complaint {
  about: string;
  words: string;
}

export interface Room {
  minX: number;
  minY: number;
  maxX: number;
  maxY: number;
}

export type Centre = [number, number];

export interface Part {
  name: string;
  layer: number;
  ofBox: boolean;
  material: string;
  paint: string | null;
  rings: Pair[][];
  engraving: Pair[][];
}

export interface Weight {
  name: string;
  at: Pair;
  radius: number;
}

export interface Body {
  name: string;
  ground: boolean;
  centre: Centre;
  parts: Part[];
  weights: Weight[];
}

export interface Pin {
  name: string;
  at: Pair;
  radius: number;
  body: string;
  layer: number;
}

export interface On {
  body: string;
  at: Pair;
}

export interface Cord {
  name: string;
  points: On[];
}

export interface Picture {
  part: string;
  at: Pair;
  width: number;
  height: number;
  state: string;
}

export interface Cloth {
  name: string;
  body: string;
  layer: number;
  ring: Pair[];
}

export interface Handle {
  body: string;
  press: Pair;
  pin: Pair;
  throwDeg: number;
}

export interface Slot {
  length: number;
  width: number;
}

export interface Works {
  slot: Slot;
  lip: Pair;
  heel: Pair;
  toe: Pair;
  body: string;
  pin: Pair;
  tipDeg: number;
  letGo: Pair;
  layer: number;
}

export interface Scene {
  name: string;
  bounds: Room;
  bodies: Body[];
  pins: Pin[];
  strings: Cord[];
  pictures: Picture[];
  cloths: Cloth[];
  lever: Handle;
  coinWorks: Works;
}

export type PoseEntry = [number | null, number | null, number | null];

export interface Way {
  stroke: number[];
  forceN: (number | null)[];
  parts: Record<string, PoseEntry[]>;
}

export interface Motion {
  pressing: Way;
  returning: Way;
}

export interface Attempt {
  shift: Pair;
  complaints: Complaint[];
  scene: Scene | null;
  motion: Motion | null;
}

export interface PhoneGuest {
  since: string;
  until: string;
}

export interface PhoneView {
  on: boolean;
  at: string;
  link: string;
  guests: PhoneGuest[];
  addresses: string[];
}

export interface BenchPulse {
  state: string;
  phone: PhoneView;
}

export interface KnownDesign {
  id: string;
  title: string;
  frozen: number;
  there: boolean;
}

export interface Interval {
  low: number;
  high: number;
}

export interface CauseTries {
  cause: string;
  words: string;
  tries: number;
  predicted: number | null;
}

export interface ScoreView {
  tries: number;
  passes: number;
  rate: number | null;
  interval95: Interval;
  failures: CauseTries[];
  cleanCoinsNeeded: number;
}

export interface CoinScore {
  coin: string;
  measured: ScoreView;
  predicted: number | null;
  builds: number;
  predicted95: Interval | null;
  gapChance: number | null;
  gapWords: string;
}

export interface Predicted {
  at: string;
  builds: number;
  passes: number;
  numbersDrawn: number;
  guesses: number;
  causes: CauseTries[];
}

export interface Frozen {
  design: string;
  number: number;
  title: string;
  at: string;
  note: string;
  coins: string[];
  all: ScoreView;
  scores: CoinScore[];
  prediction: Predicted | null;
}

export interface TimedWork {
  operation: string;
  minutes: number;
  low: number;
  high: number;
  pieces: number;
  times: number;
  revision: number;
}

export interface Since {
  number: number;
  changed: string[];
}

export interface MoneySum {
  amount: string;
  currency: string;
}

export interface MadePiece {
  serial: string;
  design: string;
  revision: number;
  batch: string;
  where: string;
  who: string;
  since: string;
  repairs: number;
  spares: number;
  returns: number;
  takings: MoneySum[];
}

export interface ValueView {
  value: number;
  low: number;
  high: number;
  unit: string;
  source: string;
}

export interface MeasuredThing {
  name: string;
  kind: string;
  about: string;
  place: string;
  measurements: number;
  value: ValueView | null;
  why: string;
}

export interface LoggedEntry {
  kind: string;
  number: number;
  key: string;
  at: string;
  words: string;
  note: string;
  struck: string | null;
}

export interface CauseChoice {
  cause: string;
  words: string;
}

export interface BenchChoices {
  coins: string[];
  causes: CauseChoice[];
  operations: string[];
  sheets: string[];
  rods: string[];
  surfaces: string[];
}

export interface BenchView {
  state: string;
  currency: string;
  design: string;
  designs: KnownDesign[];
  revisions: Frozen[];
  timed: TimedWork[];
  since: Since | null;
  pieces: MadePiece[];
  takings: MoneySum[];
  sales: MoneySum[];
  measured: MeasuredThing[];
  entries: LoggedEntry[];
  older: number;
  choices: BenchChoices;
}

export interface PlannedPart {
  name: string;
  rings: Pair[][];
  stock: string;
  layer: number;
  body: string;
  paint: string;
}

export type PointRole = "none" | "pin" | "post" | "lift" | "pull" | "lever" | "cord" | "weight" | "hole";

export interface PlannedPoint {
  name: string;
  at: Pair;
  radius: number;
  role: PointRole;
  parts: string[];
  grams: number;
}

export interface PlannedLine {
  part: string;
  points: Pair[];
}

export interface BringPlan {
  name: string;
  box: string;
  scale: number;
  placed: boolean;
  shift: Pair;
  parts: PlannedPart[];
  points: PlannedPoint[];
  lines: PlannedLine[];
}

export interface BroughtShape {
  key: string;
  id: string;
  rings: Pair[][];
  area: number;
  width: number;
  height: number;
  layer: number;
  paint: string | null;
  twins: number;
}

export interface BroughtRound {
  key: string;
  id: string;
  at: Pair;
  radius: number;
  inside: string[];
}

export interface BroughtLine {
  key: string;
  points: Pair[];
  on: string | null;
}

export interface BroughtFlaw {
  key: string;
  at: Pair;
  words: string;
}

export interface Brought {
  file: string;
  picture: boolean;
  sized: boolean;
  scale: number;
  width: number;
  height: number;
  shapes: BroughtShape[];
  rounds: BroughtRound[];
  lines: BroughtLine[];
  flaws: BroughtFlaw[];
}

export type Verdict = "works" | "doubtful" | "fails";

export type Topic = "unusual" | "what-stops" | "stays-together" | "full-stroke" | "locks-by-friction" | "comes-back" | "runs-ahead" | "finger-force" | "gesture-reached" | "arm-play" | "string-overpulled" | "string-pulls" | "cloth-spans" | "spring-acts" | "cloth-cut" | "rider-stays" | "parts-clash" | "pins-bear" | "teeth-thick" | "teeth-clear" | "teeth-stay" | "pawl-meets" | "pawl-steps" | "cam-steep" | "cam-undercut" | "ends-held" | "gesture-marked" | "hangs-together" | "holes-in-wood" | "joints-act" | "kicker-in-gap" | "layers-filled" | "parts-share" | "pegs-in-slots" | "picture-lies" | "prints-fit" | "rods-apart" | "rods-held" | "rods-pass" | "rods-turn" | "weight-fits" | "weight-heavy" | "weight-lies" | "wheels-centred" | "works-marked" | "works-ordered" | "coin-money" | "coin-fits-slot" | "coin-leans" | "coin-lands" | "coin-trips" | "coin-bridges" | "gate-locks" | "gate-opens" | "coin-thrown-clear" | "bearable-drag" | "bucket-resets" | "bucket-twist" | "catch-frees" | "catch-overlap" | "catch-holds" | "refused-press" | "pressed-home" | "leans-along" | "leans-across" | "heap" | "case-fits-sheet" | "cash-room-fits" | "coin-falls" | "coin-led" | "door-in-wall" | "press-reached" | "screws-hold" | "slot-placed" | "works-in-case" | "fits-sheet" | "thinnest-neck" | "smallest-part" | "case-bars" | "money-out" | "stands-firm" | "finger-room" | "jam-reached" | "builds" | "leans-first" | "shove" | "jiggle" | "two-coins" | "other" | "pay-cost" | "pay-minutes" | "pay-builds" | "pay-batch" | "pay-price";

export type Status = "pass" | "open" | "doubtful" | "fail";

export interface Where {
  part: string | null;
  stroke: number | null;
  at: Pair | null;
}

export interface Ground {
  name: string;
  value: number;
  low: number;
  high: number;
  unit: string;
  basis: string;
  source: string;
  drop: number;
  gain: number;
}

export interface Margins {
  low: number;
  high: number;
}

export interface Said {
  words: string;
  inches: string | null;
  value: number | null;
  unit: string | null;
}

export interface Sentence {
  pieces: Said[];
}

export interface Worded {
  question: Sentence;
  why: Sentence;
  remedy: Sentence;
}

export interface Finding {
  id: string;
  topic: Topic;
  about: string;
  question: string;
  status: Status;
  value: number | null;
  limit: number | null;
  margin: number | null;
  unit: string;
  where: Where;
  why: string;
  remedy: string;
  formula: string;
  restsOn: Ground[];
  margins: Margins | null;
  worded: Worded;
}

export type CycleStage = "lands" | "frees" | "acts" | "thrown" | "returns" | "locks" | "refuses";

export interface Stage {
  stage: CycleStage;
  atS: number | null;
  nearest: number | null;
}

export interface Cycle {
  passes: boolean;
  computed: boolean;
  stages: Stage[];
  closureMm: number;
  residual: number;
  energyFromNowhere: number;
}

export interface Coin {
  coin: string;
  fits: boolean;
  trips: boolean | null;
  tripMomentNmm: number | null;
  needMomentNmm: number | null;
  cycle: Cycle | null;
}

export type Cause = "slot" | "gap" | "bearing" | "twist" | "lands" | "frees" | "acts" | "thrown" | "returns" | "locks" | "refuses";

export interface CauseCount {
  cause: Cause;
  words: string;
  builds: number;
}

export interface Matter {
  name: string;
  correlation: number;
  guess: boolean;
}

export interface Matters {
  measure: string;
  numbers: Matter[];
  measureFirst: string | null;
}

export interface Condition {
  name: string;
  builds: number;
  passes: number;
}

export interface CardLine {
  cause: Cause;
  seen: string;
  set: string | null;
  helps: number;
  of: number;
}

export interface Tuning {
  works: number;
  rate: number;
  interval95: Interval;
  card: CardLine[];
}

export interface Builds {
  words: string;
  seed: number;
  builds: number;
  passes: number;
  notComputed: number;
  rate: number;
  interval95: Interval;
  passesByCoin: Record<string, number>;
  causes: CauseCount[];
  failing: number[];
  matters: Matters;
  conditions: Condition[];
  numbersDrawn: number;
  guesses: number;
  tuning: Tuning | null;
}

export interface Guess {
  name: string;
  share: number;
  finding: string;
}

export interface Hangs {
  worst: Verdict;
  best: Verdict;
  guesses: Guess[];
  words: string;
  measureFirst: string;
}

export interface LeftOut {
  what: string;
  instead: string;
}

export interface Report {
  formatVersion: number;
  design: string;
  verdict: Verdict;
  findings: Finding[];
  motion: Motion;
  coins: Coin[];
  builds: Builds | null;
  hangsOn: Hangs;
  leftOut: LeftOut[];
}

export interface Setting {
  path: string;
  value: number;
  about: string;
  unit: string;
  whole: boolean;
  least: number | null;
  most: number | null;
  why: string;
}

export interface Spot {
  paths: string[];
  at: Pair;
}

export interface Stop {
  path: string;
  part: string;
  pin: Pair;
  from: number;
  to: number;
}

export interface Entry {
  path: string;
  section: string;
  name: string;
  about: string;
}

export interface Choices {
  sheets: string[];
  rods: string[];
  cords: string[];
  fasteners: string[];
}

export interface Changeable {
  settings: Setting[];
  spots: Spot[];
  stops: Stop[];
  entries: Entry[];
  outlines: string[];
  choices: Choices;
  sharedWith: string[];
}

export interface DesignView {
  id: string;
  version: string;
  scene: Scene;
  report: Report;
  changeable: Changeable;
  mendable: string[];
  undo: string | null;
  redo: string | null;
  putAside: string | null;
}

export type Kind = "set" | "add" | "remove" | "rename";

export interface Step {
  kind: Kind;
  path: string;
  value: FieldValue;
}

export interface Edit {
  base: string;
  label: string;
  steps: Step[];
}

export interface OneAnswer {
  id: string;
  logged: boolean;
  problem: string | null;
}

export interface EntryAnswers {
  results: OneAnswer[];
}

export interface ForAgain {
  version: string;
  laidOut: number;
}

export interface ForDrawing {
  version: string;
  laidOut: number;
  builds: number;
  seed: number;
}

export interface ForFreezing {
  design: string;
  note: string;
}

export interface Typed {
  id: string;
  kind: string;
  at: string;
  note: string;
  fields: Record<string, string>;
}

export interface ForLogging {
  entries: Typed[];
}

export interface ForMaking {
  quantity: number;
  paper: string;
  measured: Record<string, number>;
}

export interface ForMeasured {
  kind: string;
  fields: Record<string, string>;
}

export interface ForPay {
  version: string;
  laidOut: number;
  quantity: number;
  shelf: string;
  minutes: number;
  supposed: boolean;
  numbers: Record<string, number>;
}

export interface ForPhone {
  address: string;
}

export interface ForPieces {
  builds: number;
  seed: number;
}

export interface ForPrediction {
  design: string;
  revision: number;
  builds: number;
  seed: number;
}

export interface ForSheets {
  making: ForMaking;
  seconds: number;
}

export interface Free {
  path: string;
  low: number;
  high: number;
}

export interface ForTuning {
  free: Free[];
  seed: number;
}

export interface ForUse {
  wanted: string[];
  text: string;
}

export interface Glimpse {
  scene: Scene;
  motion: Motion;
  findings: Finding[];
}

export interface BoxPart {
  name: string;
  layer: number;
  rings: Pair[][];
}

export interface BoxPoint {
  name: string;
  at: Pair;
}

export interface BoxView {
  id: string;
  name: string;
  parts: BoxPart[];
  mounts: BoxPoint[];
  lever: string;
  pivot: Pair;
  press: Pair;
}

export interface SheetView {
  name: string;
  thickness: number;
}

export interface Grounds {
  boxes: BoxView[];
  sheets: SheetView[];
}

export type State = "running" | "done" | "stopped" | "failed";

export interface Proposed {
  path: string;
  value: number;
}

export interface Proposal {
  numbers: Proposed[];
  before: Builds;
  after: Builds;
}

export interface Packed {
  file: string;
  files: number;
  bytes: number;
}

export interface JobView {
  number: number;
  design: string;
  version: string;
  state: State;
  problem: string;
  done: number;
  size: number;
  lines: string[];
  builds: Builds | null;
  proposal: Proposal | null;
  packed: Packed | null;
}

export type PaperFile = "artwork" | "cloth" | "label" | "jigs";

export interface PaperPage {
  width: number;
  height: number;
}

export interface PaperPages {
  kind: PaperFile;
  file: string;
  what: string;
  pages: PaperPage[];
}

export interface TestSheet {
  name: string;
  width: number;
  height: number;
  svg: string;
}

export interface TestMeasure {
  heading: string;
  how: string;
  becomes: string;
}

export interface MakePapers {
  papers: PaperPages[];
  tests: TestSheet[];
  measures: TestMeasure[];
}

export interface SheetLaid {
  name: string;
  stock: string;
  number: number;
  width: number;
  height: number;
  offcutWidth: number;
  offcutHeight: number;
  engrave: number;
  cut: number;
  minutes: number;
  share: number;
  svg: string;
}

export interface Needed {
  item: string;
  amount: number;
  unit: string;
  what: string;
  toBuy: number;
}

export interface MakeSheets {
  version: string;
  quantity: number;
  laid: boolean;
  seconds: number;
  sheets: SheetLaid[];
  needs: Needed[];
}

export interface Surface {
  name: string;
  vertices: number[];
  triangles: number[];
}

export interface MakeSolids {
  solids: Surface[];
}

export interface StockInHand {
  stock: string;
  thickness: number;
  low: number;
  high: number;
  basis: string;
  source: string;
  measured: number | null;
}

export interface PrintedKind {
  name: string;
  each: number;
  what: string;
  width: number;
  depth: number;
  height: number;
  grams: number;
}

export interface LayerPlace {
  layer: number;
  back: number;
  front: number;
}

export interface StackPart {
  body: string;
  thickness: number;
  part: Part;
}

export interface RodThrough {
  name: string;
  rod: string;
  from: number;
  to: number;
  length: number;
  at: Pair;
  diameter: number;
}

export interface GlueStep {
  heading: string;
  words: Sentence[];
  minutes: number;
  picture: boolean;
}

export interface MakeView {
  id: string;
  version: string;
  name: string;
  paper: string;
  papers: string[];
  mostPieces: number;
  verdict: Verdict;
  findings: Finding[];
  stocks: StockInHand[];
  printed: PrintedKind[];
  thickness: number;
  layers: LayerPlace[];
  stack: StackPart[];
  rods: RodThrough[];
  steps: GlueStep[];
  glueMinutes: number;
}

export interface MeasuredTry {
  place: string;
  alone: ValueView | null;
  why: string;
  together: ValueView | null;
  measurements: number;
}

export interface DrawnBuilds {
  builds: number;
  passes: number;
  beginners: number;
  words: string;
}

export interface HourCost {
  wage: string;
  onCosts: number;
  productive: number;
  cost: string;
  overhead: string;
  formula: string;
}

export type PriceStage = "cut" | "print" | "dress" | "build" | "try" | "pack";

export type Basis = "measured here" | "published" | "guess";

export interface Task {
  operation: string;
  what: string;
  stage: PriceStage;
  count: number;
  each: number;
  perBatch: boolean;
  learns: boolean;
  minutes: number;
  share: number;
  basis: Basis;
}

export interface MachineTime {
  machine: string;
  minutes: number;
  hour: string;
}

export interface StageYield {
  stage: PriceStage;
  good: number;
  into: number;
}

export interface CostLine {
  group: string;
  name: string;
  amount: string;
  basis: Basis;
  restsOn: string[];
}

export interface CostGroup {
  group: string;
  amount: string;
}

export interface CashLine {
  item: string;
  need: number;
  have: number;
  unit: string;
  packs: number;
  amount: string;
}

export interface Band {
  name: string;
  to: string;
}

export interface Bands {
  bands: Band[];
  guessed: boolean;
}

export interface Rung {
  name: string;
  adds: string;
  reaches: string;
}

export interface Ladder {
  channel: string;
  kind: string;
  floor: string;
  net: string;
  shelf: string;
  band: string | null;
  rungs: Rung[];
  formula: string;
  breakEven: string | null;
  breakEvenAsked: string | null;
}

export interface Backwards {
  channel: string;
  shelf: string;
  net: string;
  mayCost: string;
  mayTake: string;
  takes: number;
  paysWage: string;
  inTheWay: string[];
  shareInTheWay: number;
  words: string;
}

export interface WageStep {
  wage: string;
  floor: string;
  shelves: Record<string, string>;
}

export interface BatchSize {
  pieces: number;
  minutes: number;
  floor: string;
  cash: string;
  shelves: Record<string, string>;
  wages: Record<string, string>;
}

export interface Offer {
  id: string;
  name: string;
  words: string;
  minutesSaved: number;
  saved: string;
  capital: string;
  paysBack: string | null;
  findings: string;
  edit: Record<string, string>;
  after: string | null;
  worse: string[];
}

export interface WayLine {
  name: string;
  amount: string;
}

export interface Purse {
  whose: string;
  left: string;
  lines: WayLine[];
}

export interface Uncertain {
  value: number;
  low: number;
  high: number;
  unit: string;
  basis: Basis;
  source: string;
}

export interface Swing {
  name: string;
  number: Uncertain;
  atLow: string;
  atHigh: string;
  move: string;
}

export interface WayResult {
  id: string;
  name: string;
  unit: string;
  left: string;
  anHour: string | null;
  lines: WayLine[];
  purses: Purse[];
  months: string[];
  tiedUp: string | null;
  words: string[];
  hangsOn: Swing[];
}

export interface Sensitivity {
  of: string;
  answer: string;
  swings: Swing[];
  picture: string;
}

export interface KnownNumber {
  name: string;
  what: string;
  number: Uncertain;
}

export interface PriceReport {
  formatVersion: number;
  design: string;
  verdict: string;
  findings: Finding[];
  currency: string;
  places: number;
  rounding: string;
  pieces: number;
  asked: string;
  askedAs: string;
  hour: HourCost;
  minutes: number;
  tasks: Task[];
  machines: MachineTime[];
  yields: StageYield[];
  lines: CostLine[];
  groups: CostGroup[];
  floor: string;
  lostVat: string;
  cash: CashLine[];
  cashTotal: string;
  bands: Bands;
  ladders: Ladder[];
  laddersOtherVat: Ladder[];
  backwards: Backwards[];
  wages: WageStep[];
  batches: BatchSize[];
  quicker: Offer[];
  waysPrice: string;
  ways: WayResult[];
  sensitivity: Sensitivity[];
  numbers: KnownNumber[];
  guesses: number;
  unused: string[];
  cautions: string[];
}

export interface PayView {
  version: string;
  laidOut: number;
  edits: number;
  timed: TimedWork[];
  drawn: DrawnBuilds | null;
  report: PriceReport;
}

export interface Reached {
  stage: CycleStage;
  at: number;
}

export interface Playback {
  coin: string;
  coinDiameter: number;
  words: string;
  passes: boolean;
  times: number[];
  poses: Record<string, PoseEntry[]>;
  coinPoses: PoseEntry[];
  stages: Reached[];
  missed: CycleStage | null;
  scene: Scene | null;
  across: string | null;
}

export interface AddedPart {
  key: string;
  name: string;
  stock: string;
  layer: number;
  on: string;
}

export interface Redraw {
  base: string;
  file: string;
  text: string;
  scale: number;
  parts: Record<string, string>;
  points: Record<string, string>;
  added: AddedPart[];
  dropped: string[];
}

export type Change = "same" | "moved" | "turned" | "reshaped" | "gone";

export interface RedrawnPart {
  name: string;
  change: Change;
  key: string;
  words: string;
  was: Pair[][];
  now: Pair[][] | null;
}

export interface RedrawnPoint {
  name: string;
  change: Change;
  key: string;
  words: string;
  was: Pair;
  now: Pair;
}

export interface RedrawnShape {
  key: string;
  rings: Pair[][];
}

export interface Redrawn {
  version: string;
  scale: number;
  parts: RedrawnPart[];
  points: RedrawnPoint[];
  added: RedrawnShape[];
  sharing: string[];
}

export interface Refusal {
  problem: string;
  remedy: string;
}

export interface Remedy {
  finding: string;
  words: Sentence;
  steps: Step[];
}

export interface RenewalView {
  version: string;
  files: string[];
  lost: string[];
  back: string[] | null;
  backLost: string[];
}

export interface ChangedPart {
  mark: number;
  part: string;
  how: Sentence;
}

export interface ChangedValue {
  path: string;
  before: string;
  after: string;
}

export interface ChangedFile {
  file: string;
  how: string;
  values: ChangedValue[];
}

export interface MovedSide {
  status: string;
  margin: number | null;
  unit: string;
  why: Sentence;
}

export interface MovedFinding {
  question: Sentence;
  turned: boolean;
  then: MovedSide | null;
  now: MovedSide | null;
}

export interface RevisionPair {
  design: string;
  before: number;
  after: number;
  verdictBefore: string;
  verdictAfter: string;
  parts: ChangedPart[];
  files: ChangedFile[];
  findings: MovedFinding[];
  trouble: string;
}

export interface Standing {
  version: string;
  problem: string;
  undo: string | null;
  last: DesignView | null;
}

export interface Begin {
  from: string;
  name: string;
  box: string;
}

export interface Made {
  id: string;
}

export interface Start {
  id: string;
  name: string;
  words: string;
}

export interface Starts {
  starts: Start[];
}

export interface TakenIn {
  added: number;
  already: number;
}

export interface TrayCoin {
  code: string;
  currency: string;
  denomination: string;
  diameter: number;
  taken: boolean;
}

export interface Tray {
  coins: TrayCoin[];
}

export interface UseEffect {
  design: string;
  then: string;
  now: string;
  moved: MovedFinding[];
  trouble: string;
}

export interface UsedValue {
  name: string;
  value: ValueView;
}

export interface SkippedValue {
  name: string;
  why: string;
}

export interface UseView {
  text: string;
  values: UsedValue[];
  skipped: SkippedValue[];
  changes: ChangedValue[];
  designs: string[];
}

export interface UsualTime {
  name: string;
  what: string;
  minutes: number;
  low: number;
  high: number;
  guess: boolean;
}

export interface UsualTimes {
  stages: UsualTime[];
  operations: UsualTime[];
  trouble: string;
}

export interface VerdictView {
  id: string;
  name: string;
  verdict: Verdict | null;
  hangsOn: Hangs | null;
  trouble: string;
}

export interface VersionView {
  version: string;
}

export interface DesignName {
  id: string;
  name: string;
}

export interface Workshop {
  name: string;
  designs: DesignName[];
}

export type Doing = "set" | "add" | "remove";

export interface WorkshopStep {
  base: string;
  label: string;
  kind: Doing;
  path: string;
  value: FieldValue;
  low: string;
  high: string;
  basis: string;
  source: string;
}

export type ValueKind = "number" | "plain" | "size" | "word" | "yes_no";

export interface Known {
  value: number;
  low: number;
  high: number;
  basis: string;
  source: string;
}

export interface Value {
  path: string;
  name: string;
  about: string;
  kind: ValueKind;
  unit: string;
  words: string;
  number: Known | null;
  written: boolean;
  mayGo: boolean;
  choices: string[];
  how: string;
}

export interface Group {
  name: string;
  path: string;
  values: Value[];
}

export interface Section {
  id: string;
  title: string;
  about: string;
  groups: Group[];
}

export interface WorkshopView {
  version: string;
  name: string;
  currency: string;
  sections: Section[];
  undo: string | null;
  redo: string | null;
  putAside: string | null;
}
