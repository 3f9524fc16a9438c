#pragma once
// How far long work has come, on standard error, only where a person sits before it.
#include "format/phrase.h"

#include <cstddef>

namespace toehold::cli {

class Progress {
  public:
    /// Shows nothing where standard error is no terminal or there is only one thing to do.
    Progress(format::Locale locale, std::size_t count);
    ~Progress() { clear(); }
    Progress(const Progress&) = delete;
    Progress& operator=(const Progress&) = delete;
    Progress(Progress&&) = delete;
    Progress& operator=(Progress&&) = delete;

    /// `done` of the files are reviewed.
    void show(std::size_t done);
    void show(const format::Phrase& words);
    /// Takes the line away, for others to be printed.
    void clear();

  private:
    format::Locale locale_;
    std::size_t count_;
    bool seen_;
    bool on_screen_ = false;
};

}  // namespace toehold::cli
