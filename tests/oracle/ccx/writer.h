#pragma once
// Lines of an input deck.
#include <fmt/format.h>

#include <iterator>
#include <string>
#include <utility>

namespace toehold::test {

class Writer {
  public:
    template <class... Values>
    void line(fmt::format_string<Values...> format, Values&&... values) {
        fmt::format_to(std::back_inserter(text_), format, std::forward<Values>(values)...);
        text_.push_back('\n');
    }
    [[nodiscard]] std::string take() { return fmt::to_string(text_); }

  private:
    fmt::memory_buffer text_;
};

}  // namespace toehold::test
