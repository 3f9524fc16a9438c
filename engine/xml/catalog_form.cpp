#include "xml/catalog_form.h"

#include <array>

namespace toehold::xml {
namespace {

using catalog::Evidence;
using catalog::MetalKind;

constexpr std::array<Word<Evidence>, 5> evidence_words{{{"published", Evidence::published},
                                                        {"computed", Evidence::computed},
                                                        {"common-practice", Evidence::common_practice},
                                                        {"from-memory", Evidence::from_memory},
                                                        {"assumption", Evidence::assumption}}};
constexpr std::array<Word<MetalKind>, 3> metal_kinds{{{"carbon-steel", MetalKind::carbon_steel},
                                                      {"stainless-steel", MetalKind::stainless_steel},
                                                      {"aluminum", MetalKind::aluminum}}};

}  // namespace

catalog::Source read_source(ElementReader& row) {
    return {row.choice<Evidence>("evidence", evidence_words), row.text("source")};
}

MetalKind read_metal_kind(ElementReader& row) { return row.choice<MetalKind>("kind", metal_kinds); }

void expect(ElementReader& row, bool holds, const std::string& message, std::string_view attribute) {
    if (!holds) row.report(message, attribute);
}

}  // namespace toehold::xml
