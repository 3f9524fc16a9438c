#include "export/json/keys.h"

namespace toehold::exporting {

using checks::Severity;
using checks::Status;
using review::Verdict;

std::string_view key(Verdict verdict) {
    switch (verdict) {
        case Verdict::adequate:
            return "adequate";
        case Verdict::inadequate:
            return "inadequate";
        case Verdict::incomplete:
            return "incomplete";
    }
    return {};
}

std::string_view key(Status status) {
    switch (status) {
        case Status::holds:
            return "holds";
        case Status::fails:
            return "fails";
        case Status::no_path:
            return "no_path";
        case Status::missing_evidence:
            return "missing_evidence";
    }
    return {};
}

std::string_view key(Severity severity) {
    switch (severity) {
        case Severity::fails:
            return "fails";
        case Severity::missing:
            return "missing";
        case Severity::caution:
            return "caution";
    }
    return {};
}

}  // namespace toehold::exporting
