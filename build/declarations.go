package main

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
	b.WriteString("/** What can be worked out, by name. What can't be is absent. */\nexport interface Answers {\n")
	for _, a := range field.Answers {
		fmt.Fprintf(&b, "  /** %s, in %s */\n  %s?: Answer\n", a.Noun, unitIn(a), a.Name)
	}
	b.WriteString("}\n")
	b.WriteString(callTypes)
	return []byte(b.String())
}

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
  code: 'number' | 'unit' | 'ambiguous' | 'range' | 'missing' | 'contradiction' | 'unknown' | 'internal'
  text: string
}

export interface Reply {
  /** The answer in one line; empty while there is none. */
  sentence: string
  /** Names of what was sought and found. */
  found: (keyof Answers)[]
  answers: Answers
  /** The salt of the bath: as typed, else the metal's own; absent while it is not known. */
  salt?: string
  rows: { metal: Metal[] }
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
  /** A label for the jar of bath. */
  label?: Drawing
}

export interface CallOptions {
  /** A call cut short rejects with the signal's reason, and the next call works. */
  signal?: AbortSignal
  progress?: (share: number) => void
}

export interface Bench {
  /** Works out all that the fields suffice for. No input makes it throw. */
  answer(fields: Fields, options?: CallOptions): Promise<Reply>
  /** Looks a metal up: best first, [] when nothing is near. */
  find(words: string, options?: CallOptions): Promise<Hit[]>
  /** Draws all that the fields suffice for. No input makes it throw. */
  draw(fields: Fields, options?: CallOptions): Promise<Drawings>
  readonly version: string
  close(): void
}

export function open(): Promise<Bench>
`
