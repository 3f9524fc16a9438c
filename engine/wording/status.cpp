#include "wording/status.h"

#include "format/figures.h"

#include <cmath>

namespace toehold::wording {

using checks::Severity;
using checks::Status;
using format::Phrase;
using format::phrase;
using review::Verdict;

Phrase word(Verdict verdict) {
    switch (verdict) {
        case Verdict::adequate:
            return phrase("ADEQUATE");
        case Verdict::inadequate:
            return phrase("INADEQUATE");
        case Verdict::incomplete:
            return phrase("INCOMPLETE");
    }
    return {};
}

Phrase word(Status status) {
    switch (status) {
        case Status::holds:
            return phrase("PASS");
        case Status::fails:
            return phrase("FAIL");
        case Status::no_path:
            return phrase("NO LOAD PATH");
        case Status::missing_evidence:
            return phrase("NOT SPECIFIED");
    }
    return {};
}

Phrase word(Severity severity) {
    switch (severity) {
        case Severity::fails:
            return phrase("FAIL");
        case Severity::missing:
            return phrase("NOT SPECIFIED");
        case Severity::caution:
            return phrase("CAUTION");
    }
    return {};
}

Phrase result(const Phrase& title, const model::PartId& part) {
    return phrase("{}, {}", title, model::part_name(part));
}

Phrase ratio(Status status, double ratio) {
    if (status == Status::missing_evidence) return phrase("not specified");
    if (!std::isfinite(ratio)) return phrase("no load path");
    return phrase("demand/capacity {}", format::ratio_text(ratio));
}

Phrase worst_of(Phrase words, std::size_t count, std::size_t alike) {
    if (count < 2) return words;
    if (alike == count) return phrase("{} ({} alike)", std::move(words), count);
    if (alike > 1) return phrase("{} (worst of {}, {} alike)", std::move(words), count, alike);
    return phrase("{} (worst of {})", std::move(words), count);
}

}  // namespace toehold::wording
