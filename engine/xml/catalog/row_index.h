#pragma once
// Where every catalog row stands, over all the files of a data folder: an id is taken once, and a row that names
// another (a screw its metal, a grade its species) names one that is there.
#include "catalog/catalog.h"
#include "model/problem.h"
#include "xml/document/element_reader.h"

#include <filesystem>
#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace toehold::xml {

enum class Named { metal, species, filler };

class CatalogIndex {
  public:
    /// Rows added from here on stand in this file.
    void begin(const std::filesystem::path& file);
    /// A row of the file; a problem with it when another file has a row of this kind and id.
    void add(ElementReader& row);
    /// The row names another row, which may come in a later file.
    void refer(const ElementReader& row, Named kind, const std::string& id);

    /// The same for a row that is not under a cursor.
    void add(const std::string& path, int line, model::Problems& problems);
    void refer(const std::string& path, int line, Named kind, const std::string& id);

    /// A problem for every name no row answers to, once all files are read.
    [[nodiscard]] model::Problems unanswered(const catalog::Catalog& catalog) const;

  private:
    struct Place {
        std::string file;
        int line = 0;
    };
    struct Reference {
        Place from;
        std::string path;
        Named kind;
        std::string id;
    };
    /// Where another file has a row with this path; nullptr when none does, and then it is this row's.
    const Place* taken(const std::string& path, int line);

    std::string file_;
    std::map<std::string, Place, std::less<>> rows_;
    std::vector<Reference> references_;
};

}  // namespace toehold::xml
