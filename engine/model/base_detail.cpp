#include "model/base_detail.h"

#include "units/length.h"

namespace toehold::model {

BaseDetail::BaseDetail() = default;
BaseDetail::BaseDetail(const BaseDetail&) = default;
BaseDetail::BaseDetail(BaseDetail&&) noexcept = default;
BaseDetail& BaseDetail::operator=(const BaseDetail&) = default;
BaseDetail& BaseDetail::operator=(BaseDetail&&) noexcept = default;
BaseDetail::~BaseDetail() = default;
bool operator==(const BaseDetail&, const BaseDetail&) = default;

std::optional<double> tributary_length_in(const Guard& guard, const Loads& loads) {
    if (guard.tributary_length_in) return guard.tributary_length_in;
    if (loads.line) return units::inches_per_foot * loads.line->spacing_ft;
    return std::nullopt;
}

}  // namespace toehold::model
