// Made from the document of the API by apps/server/src/api/document.test.ts, which holds the two equal.
import type { Event, Observation, System } from '@holdfast/ecosystem'
import type { Entry, EntryKind, Issue, JournalLine, Sent, Stored } from '@holdfast/logbook'

export interface paths {
    readonly "/api/attachments/{sha256}": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** A file that was kept. */
        readonly get: operations["getAttachment"];
        /** Keeps a file, such as a picture, under the sum of its bytes; sent twice, it is kept once. */
        readonly put: operations["putAttachment"];
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/entries": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /** Stores entries, all of them or none. An id is stored once, however often it is sent; order and time of receipt are the server’s. */
        readonly post: operations["addEntries"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/entries/{id}": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** One entry with what became of it. */
        readonly get: operations["showEntry"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/export": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly get?: never;
        readonly put?: never;
        /** Takes over what an export holds, in any of its forms: what is here already stays, and nothing is doubled. */
        readonly post: operations["takeOverExport"];
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/export.csv": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** Everything in this log as CSV, for another machine or another program. */
        readonly get: operations["exportLogAsCSV"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/export.json": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** Everything in this log as JSON, for another machine or another program. */
        readonly get: operations["exportLogAsJSON"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/export.schema.json": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** The form of /api/export.json, for programs that read it. */
        readonly get: operations["showExportSchema"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/export.xlsx": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** Everything in this log as XLSX, for another machine or another program. */
        readonly get: operations["exportLogAsXLSX"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/health": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** Whether Holdfast runs here, and which start of it. */
        readonly get: operations["health"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/openapi.json": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** This document. */
        readonly get: operations["showDocument"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/systems": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** The systems of this log that are described. */
        readonly get: operations["listSystems"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/systems/{system}": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** A system with its log as the model takes it. */
        readonly get: operations["showSystem"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/systems/{system}/description": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** The description of a system on a day, without its log; before the first one, the first. */
        readonly get: operations["describeSystem"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/systems/{system}/entries": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** The journal of a system: every entry with what became of it, the latest day first and of one day the latest received. */
        readonly get: operations["listEntries"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
    readonly "/api/systems/{system}/received": {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** Every entry of a system in the order of receipt, those among them that take others back: for a program that works out by itself what holds. */
        readonly get: operations["listReceived"];
        readonly put?: never;
        readonly post?: never;
        readonly delete?: never;
        readonly options?: never;
        readonly head?: never;
        readonly patch?: never;
        readonly trace?: never;
    };
}
export type webhooks = Record<string, never>;
export interface components {
    schemas: {
        readonly Entry: Entry;
        /** @enum {string} */
        readonly EntryKind: EntryKind;
        readonly Event: Event;
        readonly Issue: Issue;
        readonly JournalLine: JournalLine;
        readonly Observation: Observation;
        readonly Outbreak: {
            readonly algae?: string;
            readonly carriedIn?: string;
            readonly done: readonly {
                readonly on: string;
                readonly what: string;
            }[];
            readonly from: string;
            readonly name: string;
            readonly since: string;
            /** @enum {string} */
            readonly stage: "seen" | "named" | "held" | "gone" | "watched" | "closed" | "back";
            readonly stopped: readonly {
                readonly on: string;
                readonly what: string;
            }[];
            readonly surfaces: readonly string[];
            readonly worked?: string;
        };
        readonly OwnFact: {
            readonly fact: string;
            readonly high: number;
            readonly low: number;
            readonly reason: string;
            readonly source?: string;
            readonly typical: number;
            readonly unit: string;
        };
        readonly Refusal: {
            readonly issues: readonly components["schemas"]["Issue"][];
        };
        readonly Sent: Sent;
        readonly Stored: Stored;
        readonly System: System;
    };
    responses: {
        /** @description The store refused, or the program failed. */
        readonly Failed: {
            headers: {
                readonly [name: string]: unknown;
            };
            content: {
                readonly "application/json": components["schemas"]["Refusal"];
            };
        };
        /** @description The request is not understood. */
        readonly NotUnderstood: {
            headers: {
                readonly [name: string]: unknown;
            };
            content: {
                readonly "application/json": components["schemas"]["Refusal"];
            };
        };
        /** @description Host or Origin is not this machine. */
        readonly OtherSite: {
            headers: {
                readonly [name: string]: unknown;
            };
            content: {
                readonly "text/plain": string;
            };
        };
        /** @description It is not application/json. */
        readonly OtherType: {
            headers: {
                readonly [name: string]: unknown;
            };
            content: {
                readonly "application/json": components["schemas"]["Refusal"];
            };
        };
        /** @description It is too large. */
        readonly TooLarge: {
            headers: {
                readonly [name: string]: unknown;
            };
            content: {
                readonly "application/json": components["schemas"]["Refusal"];
            };
        };
    };
    parameters: never;
    requestBodies: never;
    headers: never;
    pathItems: never;
}
export type $defs = Record<string, never>;
export interface operations {
    readonly getAttachment: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly sha256: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Its bytes: pictures under their media type, all else as a file to be saved. */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "*/*": unknown;
                };
            };
            readonly 400: components["responses"]["NotUnderstood"];
            readonly 403: components["responses"]["OtherSite"];
            /** @description There is no such file. */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Refusal"];
                };
            };
            readonly 500: components["responses"]["Failed"];
        };
    };
    readonly putAttachment: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly sha256: string;
            };
            readonly cookie?: never;
        };
        /** @description The bytes, with their media type. */
        readonly requestBody: {
            readonly content: {
                readonly "*/*": unknown;
            };
        };
        readonly responses: {
            /** @description On the disk. */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": {
                        readonly sha256: string;
                        readonly size: number;
                        readonly type: string;
                    };
                };
            };
            readonly 400: components["responses"]["NotUnderstood"];
            readonly 403: components["responses"]["OtherSite"];
            readonly 413: components["responses"]["TooLarge"];
            /** @description Nothing was stored. */
            readonly 422: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Refusal"];
                };
            };
            readonly 500: components["responses"]["Failed"];
        };
    };
    readonly addEntries: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** @description Entries of this workspace, of every version ever released. */
        readonly requestBody: {
            readonly content: {
                readonly "application/json": {
                    readonly entries: readonly components["schemas"]["Sent"][];
                };
            };
        };
        readonly responses: {
            /** @description On the disk. */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": {
                        readonly added: readonly string[];
                        readonly already: readonly string[];
                        readonly differing: readonly string[];
                    };
                };
            };
            readonly 400: components["responses"]["NotUnderstood"];
            readonly 403: components["responses"]["OtherSite"];
            readonly 413: components["responses"]["TooLarge"];
            readonly 415: components["responses"]["OtherType"];
            /** @description Nothing was stored; every issue of every entry. */
            readonly 422: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Refusal"];
                };
            };
            readonly 500: components["responses"]["Failed"];
        };
    };
    readonly showEntry: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly id: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Its line of the journal. */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["JournalLine"];
                };
            };
            readonly 400: components["responses"]["NotUnderstood"];
            readonly 403: components["responses"]["OtherSite"];
            /** @description There is no such entry, or it only takes another back. */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Refusal"];
                };
            };
            readonly 500: components["responses"]["Failed"];
        };
    };
    readonly takeOverExport: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        /** @description The bytes of the file. */
        readonly requestBody: {
            readonly content: {
                readonly "*/*": unknown;
            };
        };
        readonly responses: {
            /** @description On the disk. */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": {
                        readonly added: number;
                        readonly already: number;
                        readonly differing: readonly string[];
                        readonly leftOut: readonly string[];
                        /** Format: date-time */
                        readonly madeAt: string;
                        readonly systems: readonly string[];
                    };
                };
            };
            readonly 403: components["responses"]["OtherSite"];
            readonly 413: components["responses"]["TooLarge"];
            /** @description It is no whole export. Nothing was stored. */
            readonly 422: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Refusal"];
                };
            };
            readonly 500: components["responses"]["Failed"];
        };
    };
    readonly exportLogAsCSV: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description A file to be saved. */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "*/*": unknown;
                };
            };
            readonly 403: components["responses"]["OtherSite"];
            readonly 500: components["responses"]["Failed"];
        };
    };
    readonly exportLogAsJSON: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description A file to be saved. */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "*/*": unknown;
                };
            };
            readonly 403: components["responses"]["OtherSite"];
            readonly 500: components["responses"]["Failed"];
        };
    };
    readonly showExportSchema: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description JSON Schema, draft 2020-12. */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": {
                        readonly $schema: string;
                    } & {
                        readonly [key: string]: unknown;
                    };
                };
            };
            readonly 403: components["responses"]["OtherSite"];
            readonly 500: components["responses"]["Failed"];
        };
    };
    readonly exportLogAsXLSX: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description A file to be saved. */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "*/*": unknown;
                };
            };
            readonly 403: components["responses"]["OtherSite"];
            readonly 500: components["responses"]["Failed"];
        };
    };
    readonly health: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description It runs. */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": {
                        readonly kept: string;
                        /** @constant */
                        readonly program: "holdfast";
                        readonly start: string;
                        /** @constant */
                        readonly status: "ok";
                        readonly workspace: string;
                    };
                };
            };
            readonly 403: components["responses"]["OtherSite"];
            readonly 500: components["responses"]["Failed"];
        };
    };
    readonly showDocument: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description OpenAPI 3.1. */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": {
                        readonly openapi: string;
                    } & {
                        readonly [key: string]: unknown;
                    };
                };
            };
            readonly 403: components["responses"]["OtherSite"];
            readonly 500: components["responses"]["Failed"];
        };
    };
    readonly listSystems: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path?: never;
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description In the order of their ids. */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": readonly {
                        readonly id: string;
                        readonly name: string;
                    }[];
                };
            };
            readonly 403: components["responses"]["OtherSite"];
            readonly 500: components["responses"]["Failed"];
        };
    };
    readonly showSystem: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly system: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description The description that holds on the last day of the log, and what the log says to the model. */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": {
                        readonly asOf: number;
                        readonly events: readonly components["schemas"]["Event"][];
                        readonly from: number;
                        readonly kept: string;
                        readonly observations: readonly components["schemas"]["Observation"][];
                        readonly outbreaks: readonly components["schemas"]["Outbreak"][];
                        readonly ownFacts: readonly components["schemas"]["OwnFact"][];
                        readonly remarks: readonly string[];
                        readonly salinity_psu?: number;
                        readonly system: components["schemas"]["System"];
                        readonly workspace: string;
                    };
                };
            };
            readonly 400: components["responses"]["NotUnderstood"];
            readonly 403: components["responses"]["OtherSite"];
            /** @description There is no such system. */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Refusal"];
                };
            };
            readonly 500: components["responses"]["Failed"];
        };
    };
    readonly describeSystem: {
        readonly parameters: {
            readonly query: {
                readonly day: string;
            };
            readonly header?: never;
            readonly path: {
                readonly system: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description What an entry of that day is read with. */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": {
                        readonly kept: string;
                        readonly system: components["schemas"]["System"];
                        readonly workspace: string;
                    };
                };
            };
            readonly 400: components["responses"]["NotUnderstood"];
            readonly 403: components["responses"]["OtherSite"];
            /** @description There is no such system. */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Refusal"];
                };
            };
            readonly 500: components["responses"]["Failed"];
        };
    };
    readonly listEntries: {
        readonly parameters: {
            readonly query?: {
                readonly before?: string;
                readonly from?: string;
                readonly kind?: components["schemas"]["EntryKind"];
                readonly limit?: number;
                readonly to?: string;
                readonly words?: string;
            };
            readonly header?: never;
            readonly path: {
                readonly system: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description Lines of the journal; `next` is there where more follow. */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": {
                        readonly lines: readonly components["schemas"]["JournalLine"][];
                        readonly next?: string;
                    };
                };
            };
            readonly 400: components["responses"]["NotUnderstood"];
            readonly 403: components["responses"]["OtherSite"];
            /** @description There is no such system, or no such page. */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Refusal"];
                };
            };
            readonly 500: components["responses"]["Failed"];
        };
    };
    readonly listReceived: {
        readonly parameters: {
            readonly query?: never;
            readonly header?: never;
            readonly path: {
                readonly system: string;
            };
            readonly cookie?: never;
        };
        readonly requestBody?: never;
        readonly responses: {
            /** @description At the newest version of their kinds. */
            readonly 200: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": {
                        readonly entries: readonly components["schemas"]["Stored"][];
                    };
                };
            };
            readonly 400: components["responses"]["NotUnderstood"];
            readonly 403: components["responses"]["OtherSite"];
            /** @description There is no such system. */
            readonly 404: {
                headers: {
                    readonly [name: string]: unknown;
                };
                content: {
                    readonly "application/json": components["schemas"]["Refusal"];
                };
            };
            readonly 500: components["responses"]["Failed"];
        };
    };
}
