#include "paper/read_back.h"

#include "support/temporary_folder.h"

#include <array>
#include <cstdio>
#include <fstream>
#include <sstream>
#include <stdexcept>

namespace toehold::test {

std::string read_by(const std::string& program_and_options, const std::string& bytes, const std::string& ending) {
    const TemporaryFolder folder;
    const std::string file = (folder.path() / ("paper." + ending)).string();
    std::ofstream(file, std::ios::binary) << bytes;
    // Options after the file's name stand behind a placeholder.
    std::string command = program_and_options;
    const std::size_t place = command.find("FILE");
    command = place == std::string::npos ? command + " '" + file + "'" : command.replace(place, 4, "'" + file + "'");
    FILE* pipe = popen((command + " 2>&1").c_str(), "r");
    if (pipe == nullptr) throw std::runtime_error("cannot run " + program_and_options);
    std::string output;
    std::array<char, 4096> piece{};
    while (const std::size_t size = std::fread(piece.data(), 1, piece.size(), pipe)) output.append(piece.data(), size);
    if (pclose(pipe) != 0) throw std::runtime_error(program_and_options + ": " + output);
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

bool contains(const std::string& text, const std::string& words) { return text.find(words) != std::string::npos; }

}  // namespace toehold::test
