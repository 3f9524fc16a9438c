#pragma once
// A started detail as the text of a file.
#include "format/phrase.h"
#include "job/job.h"

#include <string>

namespace toehold::job {

/// The detail as `xml::write_detail` writes it, and before each element one comment for every assumed value of it, in
/// the reader's language: `<!-- assumed: species southern-pine: ... -->`. As many comments as assumed values.
[[nodiscard]] std::string as_file(const Started& started, const format::Locale& locale = {});

/// A file's name for the job: `guard-36-in-between-joists.xml`.
[[nodiscard]] std::string customary_name(const Job& job);

}  // namespace toehold::job
