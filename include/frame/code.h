/** @file code.h
 * The code book: prescriptive tables and rules of the residential code, looked up as an inspector does, edition by edition.
 * Nothing here is calculated but what the tables' own notes allow: a case a table does not cover is refused, with what it
 * does cover.
 */
#ifndef FRAME_CODE_H
#define FRAME_CODE_H

#include <frame/code/book.h>
#include <frame/code/spans.h>
#include <frame/code/decks.h>
#include <frame/code/fastening.h>
#include <frame/code/walls.h>
#include <frame/code/cuts.h>
#include <frame/code/rules.h>

#endif
