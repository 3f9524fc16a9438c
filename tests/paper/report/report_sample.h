#pragma once
// Reviews of demo details as a report is made of them, each solved once, and words of a document as they stand in it.
#include "paper/papers.h"

#include <string>
#include <vector>

namespace toehold::test {

/// With assumptions and cautions. `name` without `heron-landing-` and `.xml`.
[[nodiscard]] const review::Review& reported(const std::string& name);
/// Of the end-nailed blocks, with all the remedies that were run.
[[nodiscard]] const review::Review& reported_with_remedies();
[[nodiscard]] paper::Issue report_issue(const std::string& name);
/// Every demo detail.
[[nodiscard]] std::vector<std::string> reported_names();

/// All words of headings, paragraphs, cells, facts and verdicts, one a line, in the document's order.
[[nodiscard]] std::string words_of(const paper::Document& document);
[[nodiscard]] std::vector<paper::Heading> headings_of(const paper::Document& document);
/// Words between this heading and the next.
[[nodiscard]] std::string words_under(const paper::Document& document, const std::string& heading_name);

}  // namespace toehold::test
