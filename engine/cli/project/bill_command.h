#pragma once
#include "units/quantity.h"

#include <string>

namespace toehold::cli {

/// The bill of materials of a project or a base detail.
struct BillCommand {
    std::string file;  ///< `-`: a base detail on standard input
    bool csv = false;
    units::System system = units::System::us;
    std::string data;
};

}  // namespace toehold::cli
