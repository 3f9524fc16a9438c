#include "model/base_detail.h"

namespace toehold::model {

BaseDetail::BaseDetail() = default;
BaseDetail::BaseDetail(const BaseDetail&) = default;
BaseDetail::BaseDetail(BaseDetail&&) noexcept = default;
BaseDetail& BaseDetail::operator=(const BaseDetail&) = default;
BaseDetail& BaseDetail::operator=(BaseDetail&&) noexcept = default;
BaseDetail::~BaseDetail() = default;
bool operator==(const BaseDetail&, const BaseDetail&) = default;

}  // namespace toehold::model
