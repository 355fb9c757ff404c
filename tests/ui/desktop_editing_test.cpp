#include "core/design/file.h"
#include "tests/ui/desktop_fixture.h"
#include "ui/panels/chapters.h"
#include "ui/panels/field_editor.h"
#include "ui/panels/number_edit.h"
#include "ui/panels/number_panel.h"

#include <QLabel>
#include <QTest>

using namespace lobewright;
using namespace lobewright::ui;
using namespace lobewright::ui::test;

namespace {

FieldEditor* editorOf(NumberPanel& panel, const std::string& path) {
    for (FieldEditor* editor : panel.findChildren<FieldEditor*>()) {
        if (editor->path() == path)
            return editor;
    }
    return nullptr;
}

} // namespace

TEST(NumberText, CommaAndTrueMinusAreRead) {
    EXPECT_EQ(readNumber(QStringLiteral("12,5")), 12.5);
    EXPECT_EQ(readNumber(QStringLiteral("\u22124")), -4.0);
    EXPECT_FALSE(readNumber(QStringLiteral("twelve")));
    EXPECT_FALSE(readNumber(QStringLiteral("nan")));
}

TEST(NumberPanel, ShowsEveryFieldOfTheDesignOnce) {
    NumberPanel panel;
    const design::Design design = sampleDesign();
    panel.show(design);
    for (const design::Field& field : design::fields(design)) {
        int found = 0;
        for (const FieldEditor* editor : panel.findChildren<FieldEditor*>())
            found += editor->path() == field.path ? 1 : 0;
        EXPECT_EQ(found, 1) << field.path;
        if (!field.group.empty()) {
            EXPECT_LT(chapterOf(field) + 1, chapters().size()) << field.path << " has no chapter";
        }
    }
}

TEST(NumberPanel, SearchLeavesOnlyWhatItFinds) {
    NumberPanel panel;
    panel.show(sampleDesign());
    panel.resize(320, 700);
    static_cast<QWidget&>(panel).show();
    panel.focusSearch();
    auto* search = panel.findChild<QLineEdit*>(QString(), Qt::FindDirectChildrenOnly);
    ASSERT_NE(search, nullptr);
    search->setText(QStringLiteral("wiebe"));
    EXPECT_TRUE(editorOf(panel, "/gas/burn/wiebe_a")->isVisible());
    EXPECT_FALSE(editorOf(panel, "/mechanism/bore_mm")->isVisible());
    search->clear();
    EXPECT_TRUE(editorOf(panel, "/running/speed_rpm")->isVisible());
}
