/* How a calculation is put behind its public name: check the fields, compute, give the result; all or nothing.
 *
 *     static frame_status compute(const frame_X_in *in, frame_X_out *out, frame_working *w) { ... }
 *     FRAME_IMPLEMENT(X, compute)
 *
 * compute gets a struct of today's size whose fields are in range and whose defaults are applied (a default in "quotes"
 * is the calculation's own to resolve; its bit of out->assumed is set already). out begins blank: every figure not
 * given.
 *
 *     static frame_status solve(const frame_X_in *in, frame_answer *answer, frame_X_out *out, frame_working *w) { ... }
 *     FRAME_IMPLEMENT_ANSWER(X, solve)
 *
 * is the same for an answer of varying length: solve adds items with frame_answer_add(answer, LIST), where the lists
 * are numbered as they stand in the header, and keeps texts with frame_answer_text.
 *
 *     FRAME_IMPLEMENT_QUICK(X, compute)
 *
 * is FRAME_IMPLEMENT for what is called by the million: without a working, compute writes into the caller's own struct,
 * so that it must set every figure itself, and none before all that can fail is behind it.
 *
 *     static int usual(const frame_X_in *in, frame_X_out *out) { ... }
 *     FRAME_IMPLEMENT_USUAL(X, compute, usual)
 *
 * is FRAME_IMPLEMENT with a short way for what is asked most: usual gets the caller's own struct, of today's size but
 * not checked, and either gives 0 and leaves out as it is, for whatever is not plainly in order, or fills all of out,
 * to the bit as compute would.
 *
 * Structs are copied by memcpy of a size known at run time: compilers else write them out as string instructions, which
 * cost more than a whole calculation.
 */
#ifndef FRAME_LIB_WORKING_CALCULATION_H
#define FRAME_LIB_WORKING_CALCULATION_H

#include <string.h>

#include "base/answer.h"
#include "base/error.h"
#include "base/facts.h"
#include "working/record.h"

frame_status frame_no_out(const char *calculation);

/* From a struct that was read, for rows of columns. */
#define FRAME_CHECKED(X, compute)                                                     \
    frame_status frame_##X##_checked(const void *read, uint64_t assumed, void *out) { \
        memcpy(out, &frame_##X##_out_blank, frame_##X##_out_facts.size);              \
        ((frame_##X##_out *)out)->assumed = assumed;                                  \
        const frame_status status = compute(read, out, NULL);                         \
        return status ? status : frame_struct_finite(&frame_##X##_out_facts, out);    \
    }                                                                                 \
    typedef frame_##X##_in frame_##X##_in

#define FRAME_IMPLEMENT(X, compute)                                                                 \
    frame_status frame_##X##_sized(const frame_##X##_in *in, frame_##X##_out *out, size_t out_size, \
                                   frame_working *working) {                                        \
        frame_##X##_in read;                                                                        \
        frame_##X##_out result;                                                                     \
        uint64_t assumed = 0;                                                                       \
        if (!out || out_size < 2 * sizeof(uint32_t)) return frame_no_out(#X);                       \
        frame_status status = frame_##X##_in_read(in, &read, &assumed);                             \
        if (status) return status;                                                                  \
        memcpy(&result, &frame_##X##_out_blank, frame_##X##_out_facts.size);                        \
        result.assumed = assumed;                                                                   \
        const size_t position = working ? frame_working_mark_position(working) : 0;                 \
        status = compute(&read, &result, working);                                                  \
        if (!status && working) status = frame_working_state(working);                              \
        if (!status) status = frame_struct_finite(&frame_##X##_out_facts, &result);                 \
        if (status) {                                                                               \
            if (working) frame_working_roll_back(working, position);                                \
            return status;                                                                          \
        }                                                                                           \
        if (out_size >= sizeof result)                                                              \
            memcpy(out, &result, frame_##X##_out_facts.size);                                       \
        else                                                                                        \
            frame_struct_give(&frame_##X##_out_facts, &result, out, out_size);                      \
        return FRAME_OK;                                                                            \
    }                                                                                               \
    FRAME_CHECKED(X, compute)

/* Compute into a struct of our own, and give what the caller has room for. */
#define FRAME_THROUGH_COPY(X, compute)                                                                       \
    static frame_status X##_through_copy(const frame_##X##_in *read, uint64_t assumed, frame_##X##_out *out, \
                                         size_t out_size, frame_working *working) {                          \
        frame_##X##_out result;                                                                              \
        memcpy(&result, &frame_##X##_out_blank, frame_##X##_out_facts.size);                                 \
        result.assumed = assumed;                                                                            \
        const size_t position = working ? frame_working_mark_position(working) : 0;                          \
        frame_status status = compute(read, &result, working);                                               \
        if (!status && working) status = frame_working_state(working);                                       \
        if (status && working) frame_working_roll_back(working, position);                                   \
        if (!status) frame_struct_give(&frame_##X##_out_facts, &result, out, out_size);                      \
        return status;                                                                                       \
    }

#define FRAME_IMPLEMENT_QUICK(X, compute)                                                                       \
    FRAME_THROUGH_COPY(X, compute)                                                                              \
    frame_status frame_##X##_sized(const frame_##X##_in *in, frame_##X##_out *out, size_t out_size,             \
                                   frame_working *working) {                                                    \
        frame_##X##_in read;                                                                                    \
        uint64_t assumed = 0;                                                                                   \
        if (!out || out_size < 2 * sizeof(uint32_t)) return frame_no_out(#X);                                   \
        frame_status status = frame_##X##_in_read(in, &read, &assumed);                                         \
        if (status) return status;                                                                              \
        if (working || out_size < sizeof *out) return X##_through_copy(&read, assumed, out, out_size, working); \
        if ((status = compute(&read, out, NULL))) return status;                                                \
        out->struct_size = sizeof *out;                                                                         \
        out->struct_id = frame_##X##_out_facts.id;                                                              \
        out->assumed = assumed;                                                                                 \
        return FRAME_OK;                                                                                        \
    }                                                                                                           \
    frame_status frame_##X##_checked(const void *read, uint64_t assumed, void *out) {                           \
        frame_##X##_out *found = out;                                                                           \
        found->struct_size = sizeof *found;                                                                     \
        found->struct_id = frame_##X##_out_facts.id;                                                            \
        found->assumed = assumed;                                                                               \
        return compute(read, found, NULL);                                                                      \
    }                                                                                                           \
    typedef frame_##X##_in frame_##X##_in

#define FRAME_IMPLEMENT_USUAL(X, compute, usual)                                                                       \
    FRAME_THROUGH_COPY(X, compute)                                                                                     \
    static FRAME_RECORD_COLD frame_status X##_unusual(const frame_##X##_in *in, frame_##X##_out *out, size_t out_size, \
                                                      frame_working *working) {                                        \
        frame_##X##_in read;                                                                                           \
        uint64_t assumed = 0;                                                                                          \
        if (!out || out_size < 2 * sizeof(uint32_t)) return frame_no_out(#X);                                          \
        frame_status status = frame_##X##_in_read(in, &read, &assumed);                                                \
        return status ? status : X##_through_copy(&read, assumed, out, out_size, working);                             \
    }                                                                                                                  \
    frame_status frame_##X##_sized(const frame_##X##_in *in, frame_##X##_out *out, size_t out_size,                    \
                                   frame_working *working) {                                                           \
        const int ours = in && out && !working && out_size >= sizeof *out && in->struct_size == sizeof *in;            \
        if (!ours || in->struct_id != frame_##X##_in_facts.id || !usual(in, out))                                      \
            return X##_unusual(in, out, out_size, working);                                                            \
        out->struct_size = sizeof *out;                                                                                \
        out->struct_id = frame_##X##_out_facts.id;                                                                     \
        return FRAME_OK;                                                                                               \
    }                                                                                                                  \
    frame_status frame_##X##_checked(const void *read, uint64_t assumed, void *out) {                                  \
        (void)read, (void)assumed, (void)out; /* the short way looks at what was given */                              \
        return FRAME_RUN_ALONE;                                                                                        \
    }                                                                                                                  \
    typedef frame_##X##_in frame_##X##_in

#define FRAME_IMPLEMENT_ANSWER(X, solve)                                                                  \
    frame_status frame_##X##_solve(const frame_##X##_in *in, frame_##X **given, frame_working *working) { \
        frame_##X##_in read;                                                                              \
        uint64_t assumed = 0;                                                                             \
        if (!given) return frame_no_out(#X);                                                              \
        frame_status status = frame_##X##_in_read(in, &read, &assumed);                                   \
        if (status) return status;                                                                        \
        frame_answer *answer = frame_answer_new(&frame_##X##_calculation);                                \
        if (!answer) return FRAME_NO_MEMORY;                                                              \
        frame_##X##_out *out = answer->out;                                                               \
        out->assumed = assumed;                                                                           \
        const size_t position = working ? frame_working_mark_position(working) : 0;                       \
        status = solve(&read, answer, out, working);                                                      \
        if (!status && answer->failed) status = FRAME_NO_MEMORY;                                          \
        if (!status) status = frame_struct_finite(&frame_##X##_out_facts, out);                           \
        if (!status && working) status = frame_working_state(working);                                    \
        if (status) {                                                                                     \
            if (working) frame_working_roll_back(working, position);                                      \
            frame_answer_free(answer);                                                                    \
            return status;                                                                                \
        }                                                                                                 \
        *given = (frame_##X *)answer;                                                                     \
        return FRAME_OK;                                                                                  \
    }                                                                                                     \
    typedef frame_##X##_in frame_##X##_in

#endif
