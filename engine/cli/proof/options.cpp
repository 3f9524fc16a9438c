// Options of the command that foretells a load test.
#include "cli/command_options.h"
#include "cli/option_pieces.h"
#include "cli/proof/command.h"

#include <CLI/CLI.hpp>

namespace toehold::cli {

using format::Locale;
using format::Phrase;
using format::phrase;

void add_proof(CLI::App& app, ProofCommand& command, const Locale& locale) {
    const auto said = [&locale](const Phrase& words) { return format::text(words, locale); };
    CLI::App* proof = app.add_subcommand(
        "proof",
        said(phrase("foretell a load test of 2.5 times 200 lb, write its sheet, or compare what was measured")));
    proof->add_option("FILE", command.file, said(phrase("base detail; - reads standard input")))->required();
    proof->add_option("--samples", command.samples, said(phrase("guards drawn; default: 20000")))->type_name("N");
    proof
        ->add_option("--seed", command.seed, said(phrase("of the drawing: the same seed, the same result; default: 1")))
        ->type_name("K");
    CLI::Option* json = proof->add_flag("--json", command.json, said(phrase("print JSON, schema toehold.proof/1")));
    CLI::Option* measured =
        proof
            ->add_option("--measured", command.measured,
                         said(phrase("pushes and movements of a test, such as \"50 lb=0.21 in, 100 lb=0.43 in\": does "
                                     "the built guard agree?")))
            ->type_name("PUSH=MOVEMENT,...");
    proof->add_flag("--tests", command.tests, said(phrase("add the published tests of guard posts of 2005")))
        ->excludes(json);
    proof->add_flag("--sheet", command.sheet, said(phrase("write the sheet for the test, as PDF")))
        ->excludes(json)
        ->excludes(measured);
    add_paper_wishes(*proof, command.wishes, phrase("file of the sheet, .pdf"), locale);
    add_si(*proof, command.wishes.system, locale);
    add_language(*proof, locale);
    add_data(*proof, command.data, locale);
    add_plugins(*proof, command.plugins, locale);
}

}  // namespace toehold::cli
