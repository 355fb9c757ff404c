// Sentences that were wrong and what they say now, in both languages. Each with what it rests on.

#include "core/design/file.h"
#include "core/monitor.h"
#include "core/solution/solution.h"
#include "core/units.h"
#include "tests/places.h"
#include "tests/texts.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <regex>
#include <string>
#include <vector>

namespace {

namespace fs = std::filesystem;
using lobewright::test::everyText;
using lobewright::test::read;
using lobewright::test::Text;

const fs::path root = lobewright::test::sourceFolder();

/// What a page of help or a text of the screen says, and what none may say.
struct Sentence {
    const char* about;
    const char* page; ///< of the help; empty: on the screen
    std::string english, german;
    std::vector<std::string> neverEnglish, neverGerman;
};

const std::vector<Sentence>& sentences() {
    static const std::vector<Sentence> all = {
        {"r/l is crank radius divided by rod length",
         "",
         "Crank radius / rod length (r/l)",
         "Kurbelradius / Pleuellänge (r/l)",
         {"rod ratio"},
         {"Pleuelverhältnis", "Stangenverhältnis"}},
        {"the maximum shear is not the deepest [Johnson, Contact Mechanics, ch. 4]",
         "durability.md",
         "maximum subsurface shear stress",
         "größte Schubspannung unter der Oberfläche",
         {"deepest shear"},
         {"tiefste Schubspannung", "tiefster Schub"}},
        {"the angle of the contact force is the pressure angle [VDI 2143]",
         "contact.md",
         "pressure angle",
         "Pressungswinkel",
         {"contact angle"},
         {"Kontaktwinkel", "Eingriffswinkel"}},
        {"λ is the excess-air ratio alone; the film has Λ, the crank r/l",
         "durability.md",
         "specific film thickness Lambda",
         "spezifische Schmierfilmdicke Lambda",
         {"film ratio", "λ of the crank"},
         {"Filmverhältnis"}},
        {"flammability of methane [Zabetakis, Bulletin 627, 1965]",
         "cautions.md",
         "methane between 5 and 15 %",
         "Methan zwischen 5 und 15",
         {"wide limits"},
         {"weite Grenzen"}},
        {"at its radius of rolling the roller still slides along its axis",
         "contact.md",
         "it slides along its own axis at omega·r·sin(alpha)",
         "omega·r·sin(alpha)",
         {"roll purely", "rolls purely"},
         {"rollt rein", "rein rollen"}},
        {"the same in the tooltip of the plot",
         "",
         "along it the track slides there too",
         "längs der Achse gleitet die Bahn auch dort",
         {},
         {}},
        {"blowdown should, and may not, reach the supply pressure [Blair, ch. 1]",
         "ports.md",
         "Pressure should fall below that of the supply before the inlet opens",
         "Der Druck soll unter den Ladedruck fallen, bevor der Einlass öffnet",
         {"pressure falls below the supply before the inlet opens"},
         {}},
        {"a braked shaft is not turned: the walk, motored",
         "",
         "what this pressure gives back on the way out is less than compression took, and the "
         "shaft has to be driven",
         "die Welle muss angetrieben werden",
         {},
         {}},
        {"a displacement blower takes in the same volume, cooling makes air denser",
         "supply.md",
         "takes in the same volume of ambient air per revolution",
         "je Umdrehung dasselbe Volumen",
         {},
         {}},
        {"behind a blower cooling lowers the pressure, not the mass",
         "supply.md",
         "cooling lowers the pressure in the plenum",
         "Kühlung senkt",
         {},
         {}},
    };
    return all;
}

bool says(const std::string& text, const std::string& phrase) {
    return text.find(phrase) != std::string::npos;
}

class Substance : public testing::TestWithParam<std::string> {};

} // namespace

TEST_P(Substance, IsSaidRightAndTheWrongSentenceNowhere) {
    const bool isEnglish = GetParam() == "en";
    const auto texts = everyText(root, GetParam());
    for (const Sentence& sentence : sentences()) {
        SCOPED_TRACE(sentence.about);
        const std::string& right = isEnglish ? sentence.english : sentence.german;
        const std::string page = sentence.page;
        if (page.empty()) {
            EXPECT_TRUE(std::ranges::any_of(texts, [&](const Text& text) {
                return says(text.words, right);
            })) << right;
        } else {
            const fs::path help = root / "resources" / "help" / (isEnglish ? "" : "de");
            EXPECT_TRUE(says(read(help / page), right)) << page << ": " << right;
        }
        for (const std::string& wrong : isEnglish ? sentence.neverEnglish : sentence.neverGerman) {
            for (const Text& text : texts) {
                EXPECT_FALSE(says(text.words, wrong)) << text.place << ": " << text.words;
            }
        }
    }
}

// Pages said "Set speed_rpm" where the window says "Speed".
TEST_P(Substance, HelpSpeaksInLabelsAndNotInKeys) {
    const std::regex key("[a-z]_(mm|m|deg|bar|rpm|kg|kN|kW|K|GPa|MPa)\\b|/(running|gas|tracks|"
                         "mechanism|ports|friction|limits)/[a-z_]+");
    EXPECT_TRUE(std::regex_search("Set bore_mm", key));
    int pages = 0;
    for (const auto& entry :
         fs::directory_iterator(root / "resources" / "help" / (GetParam() == "en" ? "" : "de"))) {
        if (entry.path().extension() != ".md" || entry.path().filename() == "files.md") {
            continue;
        }
        ++pages;
        std::smatch found;
        const std::string text = read(entry.path());
        EXPECT_FALSE(std::regex_search(text, found, key)) << entry.path() << ": " << found.str();
    }
    EXPECT_GT(pages, 40);
}

INSTANTIATE_TEST_SUITE_P(Languages, Substance, testing::Values("en", "de"),
                         [](const auto& instance) { return instance.param; });

// "Turning changes compression little" is true of the geometric ratio only: the help tells both
// for the sample, and they are the sample's.
TEST(SubstanceOfTheAdjuster, RatiosOnThePageAreThoseOfTheSample) {
    using namespace lobewright;
    auto design = design::loadDesign(root / "samples" / "biogas-pump-set.lobewright.json");
    ASSERT_TRUE(design);
    SilentMonitor monitor;
    const auto ratio = [&](double setting, const char* name) {
        design::Design turned = *design;
        turned.mechanism.adjuster.setting = setting * units::degree;
        const auto solved = solution::solve(turned, monitor);
        EXPECT_TRUE(solved);
        return *solved->figure(name)->value;
    };
    const std::string page = read(root / "resources" / "help" / "adjuster.md");
    ASSERT_TRUE(says(page, "a setting of 10° lowers the geometric ratio from 10.7 to 10.3 and the "
                           "trapped ratio from 8.3 to 7.0"));
    EXPECT_NEAR(ratio(0.0, "compression_ratio"), 10.7, 0.05);
    EXPECT_NEAR(ratio(10.0, "compression_ratio"), 10.3, 0.05);
    EXPECT_NEAR(ratio(0.0, "trapped_compression_ratio"), 8.3, 0.05);
    EXPECT_NEAR(ratio(10.0, "trapped_compression_ratio"), 7.0, 0.05);
}
