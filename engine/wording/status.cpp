#include "wording/status.h"

namespace toehold::wording {

using checks::Severity;
using checks::Status;
using review::Verdict;

std::string_view word(Verdict verdict) {
    switch (verdict) {
        case Verdict::adequate:
            return "ADEQUATE";
        case Verdict::inadequate:
            return "INADEQUATE";
        case Verdict::incomplete:
            return "INCOMPLETE";
    }
    return {};
}

std::string_view word(Status status) {
    switch (status) {
        case Status::holds:
            return "holds";
        case Status::fails:
            return "FAILS";
        case Status::no_path:
            return "NO PATH";
        case Status::missing_evidence:
            return "EVIDENCE MISSING";
    }
    return {};
}

std::string_view word(Severity severity) {
    switch (severity) {
        case Severity::fails:
            return "FAILS";
        case Severity::missing:
            return "MISSING";
        case Severity::caution:
            return "CAUTION";
    }
    return {};
}

}  // namespace toehold::wording
