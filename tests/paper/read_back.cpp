#include "paper/read_back.h"

#include "support/file_bytes.h"
#include "support/program.h"
#include "support/temporary_folder.h"

#include <sstream>
#include <stdexcept>

namespace toehold::test {

std::string read_by(const std::string& program_and_options, const std::string& bytes, const std::string& ending) {
    const TemporaryFolder folder;
    const std::string file = (folder.path() / ("paper." + ending)).string();
    put_bytes(file, bytes);
    // Options after the file's name stand behind a placeholder.
    std::string command = program_and_options;
    const std::size_t place = command.find("FILE");
    command = place == std::string::npos ? command + " '" + file + "'" : command.replace(place, 4, "'" + file + "'");
    std::string output;
    if (run(command, &output) != 0) throw std::runtime_error(program_and_options + ": " + output);
    return output;
}

std::string pdf_text(const std::string& bytes) { return read_by("pdftotext -layout FILE -", bytes, "pdf"); }

int pdf_pages(const std::string& bytes) {
    const std::string facts = read_by("pdfinfo", bytes, "pdf");
    return std::stoi(facts.substr(facts.find("Pages:") + 6));
}

std::vector<PdfFont> pdf_fonts(const std::string& bytes) {
    std::istringstream lines(read_by("pdffonts", bytes, "pdf"));
    std::vector<PdfFont> fonts;
    std::string line;
    for (int number = 0; std::getline(lines, line); ++number) {
        if (number < 2) continue;  // heads
        std::istringstream words(line);
        std::vector<std::string> all;
        for (std::string word; words >> word;) all.push_back(word);
        // ... type, encoding, emb sub uni, object number and generation
        const std::size_t count = all.size();
        if (count < 6) throw std::runtime_error("pdffonts said: " + line);
        fonts.push_back({all[0], all[count - 5] == "yes", all[count - 4] == "yes", all[count - 3] == "yes"});
    }
    return fonts;
}

}  // namespace toehold::test
