#pragma once
// Pieces of an HTML page that is XML too.
#include <string>
#include <string_view>

namespace toehold::paper::page {

/// Words as content or as a quoted attribute: `&`, `<`, `>` and quotes escaped; control characters, which neither form
/// may hold, left out; bytes that are not UTF-8 become `?`.
[[nodiscard]] std::string escaped(std::string_view words);

/// `<tag attributes>content</tag>`; attributes, ready, may be empty, content is ready too.
[[nodiscard]] std::string element(std::string_view tag, std::string_view attributes, std::string_view content);
[[nodiscard]] std::string element(std::string_view tag, std::string_view content);

/// The look: of a screen by day and by night, from 320 px wide, and of paper.
[[nodiscard]] std::string_view style();
/// Keeps what is entered in the browser, and prints. Without it the page is a paper with empty fields.
[[nodiscard]] std::string_view script();

}  // namespace toehold::paper::page
