#pragma once
// What the words of an anchor group's corrosion protection say.
#include <string_view>

namespace toehold::model {

enum class Protection {
    not_stated,               ///< no words
    unknown,                  ///< words this does not know, or words that contradict each other
    none,                     ///< plain steel
    plated,                   ///< thin zinc or the like: ASTM B633, F1941
    mechanically_galvanized,  ///< ASTM B695
    hot_dip_galvanized,       ///< ASTM A153, A123, F2329
    stainless,                ///< or silicon bronze, or copper
    by_report,                ///< a coating that an evaluation report stands for
};

/// By the words of the trade in English and French and by the numbers of the standards, in any case of letters. Where
/// two sufficient protections are named, the lesser; `galvanized` alone does not say how thickly and is unknown.
[[nodiscard]] Protection protection(std::string_view text);

}  // namespace toehold::model
