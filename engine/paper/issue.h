#pragma once
#include "format/phrase.h"
#include "paper/sheet.h"

#include <string>

namespace toehold::paper {

/// What stands on every paper beside the detail.
struct Issue {
    std::string project;         ///< empty: the detail's own, else left out
    std::string date;            ///< ISO 8601 day; empty: no date is written
    std::string file;            ///< name of the file the detail was read from, without its folder
    std::string program;         ///< `Toehold 0.6.0`
    format::Locale locale = {};  ///< units and language of whoever reads it
    PaperSize paper = PaperSize::letter;
    std::string marks = {};     ///< of the posts it is for, `P1 to P12`; empty: not said
    std::size_t quantity = 0;   ///< how many of the part are to be made; 0: not said
    std::string revision = {};  ///< of the paper; empty: none
    std::string link = {};      ///< where a site page can be fetched, an URL; empty: nowhere
};

}  // namespace toehold::paper
