#pragma once
// Questions of a job asked on a terminal, or answered through a pipe, line by line. They are asked on standard error,
// so that standard output is the command's own.
#include "format/phrase.h"
#include "job/questions.h"

namespace toehold::cli {

/// Asks until an answer is taken; an empty line takes the one in brackets. False where the answers end before.
[[nodiscard]] bool ask(const job::Question& question, job::Job& job, const format::Locale& locale);

}  // namespace toehold::cli
