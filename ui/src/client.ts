/**
 * The only caller of the host: one function for each command.
 *
 * Everything the interface knows comes through here, with types generated from
 * the engine. A failed command rejects with a `HostError`, whose code the
 * interface may act on and whose message it may show.
 */
import { invoke } from "@tauri-apps/api/core";

import type { About } from "./types/About";
import type { ApiError } from "./types/ApiError";
import type { Answer } from "./types/Answer";
import type { AttachmentsView } from "./types/AttachmentsView";
import type { BoardShown } from "./types/BoardShown";
import type { ChoiceView } from "./types/ChoiceView";
import type { ConflictView } from "./types/ConflictView";
import type { DemoView } from "./types/DemoView";
import type { EarlierFixView } from "./types/EarlierFixView";
import type { ExchangeChoice } from "./types/ExchangeChoice";
import type { ExchangeDone } from "./types/ExchangeDone";
import type { FieldEntry } from "./types/FieldEntry";
import type { FigureView } from "./types/FigureView";
import type { FleetFilter } from "./types/FleetFilter";
import type { FleetQuery } from "./types/FleetQuery";
import type { FleetReportRequest } from "./types/FleetReportRequest";
import type { FleetVisits } from "./types/FleetVisits";
import type { Soundness } from "./types/Soundness";
import type { Keeping } from "./types/Keeping";
import type { LearnedView } from "./types/LearnedView";
import type { NewPhoto } from "./types/NewPhoto";
import type { NewVisit } from "./types/NewVisit";
import type { PhotoEntry } from "./types/PhotoEntry";
import type { PicturesView } from "./types/PicturesView";
import type { ReadingEntry } from "./types/ReadingEntry";
import type { ReportRequest } from "./types/ReportRequest";
import type { Saved } from "./types/Saved";
import type { SettingChange } from "./types/SettingChange";
import type { SettingsView } from "./types/SettingsView";
import type { SignatureEntry } from "./types/SignatureEntry";
import type { StepChange } from "./types/StepChange";
import type { TemplateView } from "./types/TemplateView";
import type { VerdictEntry } from "./types/VerdictEntry";
import type { VisitLine } from "./types/VisitLine";
import type { VisitView } from "./types/VisitView";
import type { WhyQuestion } from "./types/WhyQuestion";

export class HostError extends Error {
  readonly code: string;
  readonly context: ApiError["context"];

  constructor(error: ApiError) {
    super(error.message);
    this.name = "HostError";
    this.code = error.code;
    this.context = error.context;
  }
}

function isApiError(value: unknown): value is ApiError {
  return typeof value === "object" && value !== null && "code" in value && "message" in value;
}

async function call<Output>(
  command: string,
  input: Record<string, unknown> | Uint8Array = {},
): Promise<Output> {
  try {
    return await invoke<Output>(command, input);
  } catch (error) {
    if (isApiError(error)) throw new HostError(error);
    throw new HostError({ code: "host", message: String(error), context: {} });
  }
}

/** What this installation is. */
export const about = (): Promise<About> => call("about");

/** All visits, last changed first. */
export const listVisits = (): Promise<VisitLine[]> => call("list_visits");

/** Starts a visit. */
export const startVisit = (visit: NewVisit): Promise<VisitView> => call("start_visit", { new: visit });

/** A visit with everything entered so far. */
export const openVisit = (visit: string): Promise<VisitView> => call("open_visit", { visit });

/** Ends a visit as put right and proven, though something of it is open. */
export const endAsProven = (visit: string): Promise<VisitView> => call("end_as_proven", { visit });

/** Changes one fact of a visit. */
export const setField = (visit: string, entry: FieldEntry): Promise<VisitView> =>
  call("set_field", { visit, entry });

/** Answers a question, or makes its answer unknown again. */
export const setAnswer = (
  visit: string,
  finding: string,
  answer: string | null,
): Promise<VisitView> => call("set_answer", { visit, finding, answer });

/** Keeps a reading, new or changed. */
export const putReading = (visit: string, entry: ReadingEntry): Promise<VisitView> =>
  call("put_reading", { visit, entry });

/** Takes a reading away. */
export const removeReading = (visit: string, reading: string): Promise<VisitView> =>
  call("remove_reading", { visit, reading });

/** The causes with their reasons, the checks worth making, and the work plan. */
export const answerCall = (visit: string): Promise<Answer> => call("answer_call", { visit });

/** Where a number of the answer comes from. */
export const explain = (visit: string, question: WhyQuestion): Promise<FigureView> =>
  call("explain", { visit, question });

/** The drawing of the system and the charts, these so many points wide. */
export const pictures = (visit: string, width: number): Promise<PicturesView> =>
  call("pictures", { visit, width });

/** Changes what is known of a step of the work plan. */
export const changeStep = (visit: string, step: string, change: StepChange): Promise<VisitView> =>
  call("change_step", { visit, step, change });

/** Keeps what is typed at a place of a visit, or of the settings, and not kept yet, or forgets it. */
export const putDraft = (visit: string | null, place: string, text: string | null): Promise<void> =>
  call("put_draft", { visit, place, text });

/** Takes the last entry of a visit back. */
export const undoLast = (visit: string): Promise<VisitView> => call("undo_last", { visit });

/** Usual systems to start from. */
export const listTemplates = (): Promise<TemplateView[]> => call("list_templates");

/** Takes a usual system as this visit's. */
export const useTemplate = (visit: string, template: string): Promise<VisitView> =>
  call("use_template", { visit, template });

/** Copies the system of another visit. */
export const copySystem = (visit: string, from: string): Promise<VisitView> =>
  call("copy_system", { visit, from });

/** Moves a visit to the site and system of another. */
export const joinSite = (visit: string, earlier: string): Promise<VisitView> =>
  call("join_site", { visit, earlier });

/** What was chosen once. */
export const settings = (): Promise<SettingsView> => call("settings");

/** Changes one setting. */
export const changeSetting = (change: SettingChange): Promise<SettingsView> =>
  call("change_setting", { change });

/** Keeps a picture file as the company's logo. */
export const putLogo = (file: Uint8Array): Promise<SettingsView> => call("put_logo", file);

/** What there is of the invented demonstration company. */
export const demo = (): Promise<DemoView> => call("demo");

/** Loads it. */
export const loadDemo = (): Promise<DemoView> => call("load_demo");

/** Takes all of it away again. */
export const removeDemo = (): Promise<DemoView> => call("remove_demo");

/** Photos and signatures of a visit. */
export const attachments = (visit: string): Promise<AttachmentsView> => call("attachments", { visit });

/** Keeps a photo. */
export const addPhoto = (visit: string, photo: NewPhoto): Promise<AttachmentsView> =>
  call("add_photo", { visit, photo });

/** Changes what is said of a photo. */
export const describePhoto = (visit: string, entry: PhotoEntry): Promise<AttachmentsView> =>
  call("describe_photo", { visit, entry });

/** Takes a photo away. */
export const removePhoto = (visit: string, photo: string): Promise<AttachmentsView> =>
  call("remove_photo", { visit, photo });

/** A photo in full, as a `data:` address. */
export const showPhoto = (photo: string): Promise<string> => call("show_photo", { photo });

/** Keeps a signature in place of an earlier one of the same role. */
export const setSignature = (visit: string, entry: SignatureEntry): Promise<AttachmentsView> =>
  call("set_signature", { visit, entry });

/** Takes a signature away. */
export const clearSignature = (visit: string, role: string): Promise<AttachmentsView> =>
  call("clear_signature", { visit, role });

/** Asks where to save a report and writes it there. */
export const saveReport = (visit: string, title: string, request: ReportRequest): Promise<Saved> =>
  call("save_report", { visit, title, request });

/** Shows the report saved last. */
export const openReport = (): Promise<void> => call("open_report");

/** Whether the database is sound. */
export const soundness = (): Promise<Soundness> => call("soundness");

/** Which backups there are. */
export const keeping = (): Promise<Keeping> => call("keeping");

/** Asks where to save a backup of everything and writes it there. */
export const saveBackup = (title: string): Promise<Saved> => call("save_backup", { title });

/** Restores an automatic backup. */
export const restoreBackup = (number: number): Promise<void> => call("restore_backup", { number });

/** Asks for a backup file and restores it; false when none was chosen. */
export const restoreBackupFile = (title: string): Promise<boolean> =>
  call("restore_backup_file", { title });

/** Asks where to save and writes the chosen records there. */
export const exportRecords = (title: string, choice: ExchangeChoice): Promise<Saved> =>
  call("export_records", { title, choice });

/** Asks for an exchange file and takes it in; none when no file was chosen. */
export const importRecords = (title: string): Promise<ExchangeDone | null> =>
  call("import_records", { title });

/** Records on which devices disagree. */
export const recordConflicts = (): Promise<ConflictView[]> => call("record_conflicts");

/** Decides which state of a record stands. */
export const settleRecord = (kind: string, record: string, keep: string): Promise<ConflictView[]> =>
  call("settle_record", { kind, record, keep });

/** The board with its pictures, these so many points wide. */
export const board = (query: FleetQuery, width: number): Promise<BoardShown> =>
  call("board", { query, width });

/** How a part of the board is counted. */
export const explainBoard = (part: string): Promise<FigureView> => call("explain_board", { part });

/** The visits behind a figure. */
export const fleetVisits = (filter: FleetFilter, skip: number, take: number): Promise<FleetVisits> =>
  call("fleet_visits", { filter, skip, take });

/** Asks where to save a table of the board and writes it there. */
export const saveBoardTable = (title: string, query: FleetQuery, table: string): Promise<Saved> =>
  call("save_board_table", { title, query, table });

/** Asks where to save the manager's report and writes it there. */
export const saveFleetReport = (title: string, request: FleetReportRequest): Promise<Saved> =>
  call("save_fleet_report", { title, request });

/** Fixes of earlier visits to this system, to ask about. */
export const earlierFixes = (visit: string): Promise<EarlierFixView[]> =>
  call("earlier_fixes", { visit });

/** Keeps whether an earlier fix held. */
export const answerEarlierFix = (
  visit: string,
  fix: EarlierFixView,
  held: boolean,
): Promise<EarlierFixView[]> =>
  call("answer_earlier_fix", { visit, earlier: fix.visit, cause: fix.cause, held });

/** Keeps that a cause was there or was not, or takes it back. */
export const setVerdict = (visit: string, entry: VerdictEntry): Promise<VisitView> =>
  call("set_verdict", { visit, entry });

/** Every check that may decide a cause. */
export const listChecks = (): Promise<ChoiceView[]> => call("list_checks");

/** What was learned from confirmed causes. */
export const learned = (): Promise<LearnedView> => call("learned");

/** How the callbacks moved what is expected of a cause. */
export const explainLearned = (cause: string): Promise<FigureView> =>
  call("explain_learned", { cause });

/** Asks where to save what was counted here and writes it there. */
export const saveLearned = (title: string): Promise<Saved> => call("save_learned", { title });

/** Asks for a file of counts and takes it in; none when no file was chosen. */
export const takeLearned = (title: string): Promise<LearnedView | null> =>
  call("take_learned", { title });

/** Begins to learn anew. */
export const learnAnew = (): Promise<LearnedView> => call("learn_anew");
