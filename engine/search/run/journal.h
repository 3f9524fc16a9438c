#pragma once
// The file in which a search keeps what it judged, so that it can go on after Ctrl-C, a power cut or a reboot. Lines of
// lines.h, added as work is done; a line cut short by a crash is dropped. It names its space, and is resumed on no
// other.
#include "format/phrase.h"
#include "search/run/judged.h"

#include <cstdio>
#include <memory>
#include <stdexcept>
#include <string>
#include <utility>
#include <vector>

namespace toehold::search {

/// The journal cannot be used: `why` says it to people.
struct JournalError : std::runtime_error {
    explicit JournalError(format::Phrase reason)
        : std::runtime_error(format::english(reason)), why(std::move(reason)) {}
    format::Phrase why;
};

class Journal {
  public:
    /// Begins a new file; where one stands there already, goes on with it if `resume`, adding what it says to `judged`,
    /// and else throws JournalError. Also where it cannot be read or written, another search writes it, it has a line
    /// that is none, or belongs to another space. `space`: its short name.
    Journal(std::string file, std::string space, bool resume, Judged& judged);

    /// Written through to the system before this returns. Throws JournalError.
    void add(const std::vector<Judgement>& judgements);

  private:
    struct Close {
        void operator()(std::FILE* file) const { std::fclose(file); }
    };
    std::string file_, space_;
    std::unique_ptr<std::FILE, Close> out_;
};

/// Adds what lines say to `judged`; `source` names them in messages. Throws JournalError for a line that is none, of
/// another space, or of a candidate the space does not have.
void add_lines(const std::string& text, const std::string& source, const std::string& space, Judged& judged);

}  // namespace toehold::search
