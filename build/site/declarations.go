package site

import (
	"fmt"
	"strings"

	"saltbite/calc/field"
	"saltbite/site/words"
)

// declarations is saltbite.d.mts: the types of the calls that saltbite.mjs
// offers, made from the tables of fields and answers.
func declarations() []byte {
	var b strings.Builder
	b.WriteString("// The calls of saltbite.mjs. Made from the tables of fields and answers by `go run ./build`.\n\n")
	b.WriteString("/** Fields by name: text as a person would type it, with or without its unit; blank is not given. */\n")
	b.WriteString("export interface Fields {\n")
	for _, f := range field.Fields {
		fmt.Fprintf(&b, "  /** %s */\n  %s?: %s\n", describe(f), f.Name, typeOf(f))
	}
	b.WriteString("}\n\n")
	b.WriteString("/** What can be calculated, by name. What can't be is absent. */\nexport interface Answers {\n")
	for _, a := range field.Answers {
		fmt.Fprintf(&b, "  /** %s, in %s */\n  %s?: Answer\n", a.Noun, unitIn(a), a.Name)
	}
	b.WriteString("}\n")
	b.WriteString(callTypes)
	return []byte(b.String())
}

// elementDeclarations is embed.d.ts: the types of the element that embed.js defines.
func elementDeclarations() []byte { return []byte(elementTypes) }

const elementTypes = `// The element of embed.js. A page that loads the script can refer to it so:
//
//     /// <reference path="embed.d.ts" />

import type { Fields, Reply } from './saltbite.mjs'

/** The answer, and the fields that it answers. */
export interface BenchAnswer extends Reply {
  fields: Record<string, string>
}

export interface SaltbiteBenchEventMap {
  /** The calculator is there. */
  'saltbite:ready': CustomEvent<null>
  'saltbite:answer': CustomEvent<BenchAnswer>
  /** The calculator has not come after 30 s; detail says which address was tried. */
  'saltbite:error': CustomEvent<string>
}

export interface SaltbiteBench extends HTMLElement {
  /** The fields as they stand, what was typed included. */
  get fields(): Record<string, string>
  /** Replaces the whole job: a field that is not among these is blank. */
  set fields(fields: Fields)
  /** The answer to the fields as they stand. Rejects with a TimeoutError after 30 s without one. */
  answer(): Promise<BenchAnswer>
  addEventListener<K extends keyof SaltbiteBenchEventMap>(
    type: K, listener: (this: SaltbiteBench, event: SaltbiteBenchEventMap[K]) => unknown, options?: boolean | AddEventListenerOptions): void
  addEventListener(type: string, listener: EventListenerOrEventListenerObject, options?: boolean | AddEventListenerOptions): void
  removeEventListener<K extends keyof SaltbiteBenchEventMap>(
    type: K, listener: (this: SaltbiteBench, event: SaltbiteBenchEventMap[K]) => unknown, options?: boolean | EventListenerOptions): void
  removeEventListener(type: string, listener: EventListenerOrEventListenerObject, options?: boolean | EventListenerOptions): void
}

declare global {
  interface HTMLElementTagNameMap {
    'saltbite-bench': SaltbiteBench
  }
}
`

// describe is one line about a field.
func describe(f field.Field) string {
	said := words.Fields[f.Name]
	line := said.Label
	if said.Help != "" {
		line += ": " + said.Help
	}
	if f.Bare != "" {
		line += "; a bare number is in " + f.Bare
	}
	if f.Default != "" {
		line += "; blank is " + f.Default
	}
	return line + ". Such as " + f.Example
}

func typeOf(f field.Field) string {
	if f.Form != field.Choice {
		return "string | number"
	}
	quoted := make([]string, len(f.Choices))
	for i, c := range f.Choices {
		quoted[i] = "'" + c + "'"
	}
	return strings.Join(quoted, " | ") + " | ''"
}

func unitIn(a field.Answer) string {
	if a.Unit == "" {
		return "no unit"
	}
	return a.Unit
}

const callTypes = `
export interface Answer {
  /** Not rounded, in the fixed unit. */
  value: number
  unit: string
  /** As the page prints it. */
  text: string
  low?: number
  high?: number
  /** The range in words, where one is known. */
  range?: string
  /** What the range rests on, where that depends on the bath. */
  by?: string
}

export interface Metal {
  id: string
  name: string
  composition: string
  density: number
  family: string
  why: string
  remark?: string
}

export interface Cell {
  value: number
  unit: string
  text: string
}

/** A bite of several: how deep it goes, over which area, how long, at which current, and the depth reached after it. */
export interface Bite {
  depth: Cell
  area: Cell
  minutes: Cell
  amperes: Cell
  reached: Cell
}

export interface Cause {
  code: string
  text: string
  do: string
  field: string
  source: string
}

export interface Caution {
  code: string
  level: 'note' | 'warn' | 'stop'
  field?: keyof Fields
  text: string
  /** The same in at most 60 characters. */
  card: string
}

export interface FieldError {
  /** The field's name, as it was given; '' if the error is in none. */
  field: string
  code: 'number' | 'unit' | 'ambiguous' | 'range' | 'missing' | 'contradiction' | 'unknown' | 'picture' | 'internal'
  text: string
  /** Of an ambiguous text: what else to type, each of them clear. */
  readings?: string[]
}

export interface Reply {
  /** The answer in one line; empty until something is answered. */
  sentence: string
  /** Names of the values that were left blank and found. */
  found: (keyof Answers)[]
  answers: Answers
  /** The salt of the bath: as typed, else the metal's own; absent while it is not known. */
  salt?: string
  rows: {
    /** What was understood by the metal, and after it what else it could be. */
    metal: Metal[]
    /** Bite by bite, where several depths are wanted; else empty. */
    bites: Bite[]
    /** What explains what is seen, likeliest first. */
    causes?: Cause[]
  }
  /** What was read of each field that was typed. */
  given: { [name in keyof Fields]?: Partial<Cell> & { text: string } }
  /** The verdict on the supply, once volts or amps is given. */
  supply?: { fits: 'yes' | 'limit' | 'no'; text: string; assumed: (keyof Fields)[] }
  cautions: Caution[]
  errors: FieldError[]
}

export interface Hit {
  id: string
  name: string
  why: string
}

/** A path, or a text on its baseline; lengths are in mm of the drawing's frame. The role says what it is; it has no colour. */
export type Shape =
  | { role: string; path: string; dash?: true }
  | { role: string; text: string; x: number; y: number; size: number; anchor: 'start' | 'middle' | 'end'; strong?: true }

export interface Drawing {
  width: number
  height: number
  title: string
  /** Says the same as the picture. */
  words: string
  /** Family of the metal, for its tone. */
  metal?: 'copper' | 'brass' | 'bronze' | 'nickel silver' | 'silver' | 'other'
  /** In painting order. */
  shapes: Shape[]
}

/** What can't be drawn is absent. */
export interface Drawings {
  /** A cut through the sheet at its finest line. */
  section?: Drawing
  /** Depth against time. */
  curve?: Drawing
  /** The bench card, half a sheet of paper. */
  card?: Drawing
  /** What went wrong, for the back of the card. */
  back?: Drawing
  /** A label for the jar of bath. */
  label?: Drawing
}

/** The bytes of a PNG or JPEG, a file of them, pixels as ImageData has them, or one to learn from: a lone line beside an open field, or a field in a frame. */
export type Picture = Uint8Array | ArrayBuffer | Blob | { width: number; height: number; data: Uint8Array | Uint8ClampedArray } | { classic: 'line' | 'frame' }

/** A narrow line or space; x and y are its middle, from the top left. */
export interface Narrow {
  kind: 'line' | 'space'
  x: Cell
  y: Cell
  width: Cell
  /** A line that does not survive the depth. */
  lost?: true
}

export interface Measured {
  sentence: string
  /** open, area, edge, line, space, grey, islands, holes, lost, width and height; lengths need a real size. A photograph has threshold too. */
  answers: { [name in 'open' | 'area' | 'edge' | 'line' | 'space' | 'grey' | 'islands' | 'holes' | 'lost' | 'threshold' | 'width' | 'height']?: Answer }
  /** The narrowest, and the middles of the largest greys, at most 20 of each. */
  rows: { narrow: Narrow[]; greys: { x: Cell; y: Cell }[] }
  /** Fields that were blank, with what the picture gives: the same job with these is answered alike without it. */
  fields: { [name in keyof Fields]?: string }
  /** What was measured, small: how far each cell is exposed, from 0, resist, to 255, row by row from the top left. */
  map?: { width: number; height: number; values: Uint8Array }
  cautions: Caution[]
  errors: FieldError[]
}

export interface Prepared {
  sentence: string
  /** Of one copy as it is printed; closed counts the gaps that widening the lines closes. */
  answers: { [name in 'open' | 'area' | 'edge' | 'line' | 'space' | 'lost' | 'closed' | 'width' | 'height']?: Answer }
  rows: { narrow: Narrow[] }
  cautions: Caution[]
  errors: FieldError[]
  /** Absent if nothing could be prepared, as is the size of all that is printed. */
  png?: Uint8Array
  sheet?: { width: Cell; height: Cell }
}

/** A local depth, in words and in the colour of its place on the scale, such as #d5c63f. */
export interface Shade {
  text: string
  colour: string
}

/** A place that goes deep. x and y are its middle, from the top left; across and down the same as shares of the picture; over: it is deeper than depth, which is that of most, by how much can't be told. */
export interface Spot {
  x: Cell
  y: Cell
  depth: Cell
  across: number
  down: number
  over: boolean
}

export interface Evenness {
  sentence: string
  /** least, most, spread and uncertainty in % of the mean depth; bathResistance in ohm, of the bath before one picture; wagner; iterations. */
  answers: { [name in 'least' | 'most' | 'spread' | 'bathResistance' | 'wagner' | 'iterations' | 'uncertainty']?: Answer }
  /** The deepest places, the deepest first, at most 8. */
  rows: { spots: Spot[] }
  /** Fields that were blank, with what the solution gives: the same job with these is answered alike without the picture. */
  fields: { [name in keyof Fields]?: string }
  map?: {
    width: number
    height: number
    /** Local depth over the mean, row by row from the top left; 0 on resist. */
    values: Float32Array
    /** The same in whole per cent, at most 255. */
    levels: Uint8Array
    /** The least level but 0: that of the first of the shades. */
    first: number
    /** Of each level from the first to the most. */
    shades: Shade[]
    /** Of the colours, from shallow to deep. */
    scale: Shade[]
    /** Lines of the same depth: SVG path data in per cent of width and height, and the place of the text as shares of them. */
    contours: { text: string; path: string; across: number; down: number }[]
  }
  /** Fields that were blank and that something stood for. */
  assumed: (keyof Fields)[]
  cautions: Caution[]
  errors: FieldError[]
}

/** least, most and spread in % of the mean depth, volts those of the bath alone before one picture, longer in % of the time that an even etch takes. */
export interface Varied {
  least: Cell
  most: Cell
  spread: Cell
  volts: Cell
  longer: Cell
}

export interface Distances {
  sentence: string
  /** Distances, the nearest first. Borders of exposed scrap, all at the distance of the job: first without a border, then the narrowest. */
  rows: { distances: (Varied & { distance: Cell })[]; scrap: (Varied & { border: Cell })[] }
  errors: FieldError[]
}

/** One finished run by itself, in %. */
export interface Run {
  row: number
  efficiency: number
  low: number
  high: number
  /** Why it stands out. */
  odd?: string
}

/** What hangs on one supply at once; times are minutes after the beginning. */
export interface Load {
  load: number
  round: number
  supply: number
  start: number
  minutes: number
  amperes: number
  /** Where its bar begins and ends in a timetable drawn to scale, in % of the width. */
  from: number
  to: number
  text: string
  /** lift: when they reach their depth; down: what the current is turned down to then; to: where their bar ends. */
  pieces: { name: string; count: number; lift: number; down: number; to: number; text: string }[]
}

/** Something to do, so many minutes after the beginning; time says the same by the clock where the start is known. */
export interface ClassStep {
  at: number
  time: string
  load: number
  supply: number
  text: string
}

/** The reply to a call with many rows. */
export interface Many {
  sentence: string
  answers: { [name: string]: Answer | undefined }
  /** Of a class: what to do in its order, the timetable's scale, a card for each student, and what fits the session where the plan does not. */
  rows: { runs: Run[]; instead?: string[]; steps?: ClassStep[]; ticks?: { at: number; text: string }[]; cards?: { name: string; lines: string[] }[] }
  plan: Load[]
  cautions: Caution[]
  /** row counts from 0; a mistake without one is in the fields beside the rows. */
  errors: (FieldError & { row?: number })[]
}

export interface CallOptions {
  /** A call cut short rejects with the signal's reason, and the next call works. */
  signal?: AbortSignal
  /** Hears how much of the work is done, from 0 to 1. An answer takes milliseconds: it tells 1, once it is there. */
  progress?: (share: number) => void
}

export interface Bench {
  /** Works out all that the fields suffice for. No input makes it throw. */
  answer(fields: Fields, options?: CallOptions): Promise<Reply>
  /** Looks a metal up: best first, [] when nothing is near. */
  find(words: string, options?: CallOptions): Promise<Hit[]>
  /** Draws all that the fields suffice for. No input makes it throw. */
  draw(fields: Fields, options?: CallOptions): Promise<Drawings>
  /** Measures a picture of the resist, in a thread of its own. No input makes it throw. */
  measure(picture: Picture, fields?: Fields, options?: CallOptions): Promise<Measured>
  /** Makes a picture ready to print: black and white, at true size, as the fields ask. No input makes it throw. */
  prepare(picture: Picture, fields?: Fields, options?: CallOptions): Promise<Prepared>
  /** Works out how evenly a picture of the resist is etched. No input makes it throw. */
  evenness(picture: Picture, fields?: Fields, options?: CallOptions): Promise<Evenness>
  /** Works out how even it would be at other distances to the cathode, and with a border of scrap, at the same density. No input makes it throw. */
  distances(picture: Picture, fields?: Fields, options?: CallOptions): Promise<Distances>
  /** Fits finished runs: what this bench really does, with its range. No input makes it throw. */
  trial(rows: Fields[], fields?: Fields, options?: CallOptions): Promise<Many>
  /** Plans a class: many pieces, few supplies, one clock. No input makes it throw. */
  batch(rows: (Fields & { name?: string })[], fields?: Fields, options?: CallOptions): Promise<Many>
  readonly version: string
  close(): void
}

export function open(): Promise<Bench>
`
