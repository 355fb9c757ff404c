#include "core/design/file.h"
#include "tests/ui/desktop_fixture.h"
#include "ui/document/autosave.h"

#include <QFile>
#include <QSignalSpy>

using namespace lobewright;
using namespace lobewright::ui;
using namespace lobewright::ui::test;

namespace {

Edit boreEdit(double mm, const QString& mergeKey = {}) {
    return {QStringLiteral("Change bore"), {{"/mechanism/bore_mm", mm}}, {}, mergeKey};
}

double bore(const Document& document) {
    return document.design().mechanism.bore * 1e3;
}

class DocumentTest : public ::testing::Test {
  protected:
    void SetUp() override { document_.start(sampleDesign(), QStringLiteral("sample")); }
    QTemporaryDir folder_;
    Document document_;
};

} // namespace

TEST_F(DocumentTest, EditIsOneNamedUndoStep) {
    const design::Design before = document_.design();
    ASSERT_TRUE(document_.apply(boreEdit(70.0)).empty());
    EXPECT_NEAR(bore(document_), 70.0, 1e-12);
    EXPECT_EQ(document_.undoStack().undoText(), QStringLiteral("Change bore"));
    EXPECT_TRUE(document_.isModified());
    document_.undoStack().undo();
    EXPECT_EQ(document_.design(), before);
    EXPECT_FALSE(document_.isModified());
}

TEST_F(DocumentTest, StepsOfOneDragMergeAndStepsOfTwoDragsDoNot) {
    for (const double mm : {65.0, 66.0, 67.0})
        document_.apply(boreEdit(mm, QStringLiteral("bore")));
    EXPECT_EQ(document_.undoStack().count(), 1);
    document_.finishEdit();
    document_.apply(boreEdit(68.0, QStringLiteral("bore")));
    EXPECT_EQ(document_.undoStack().count(), 2);
    document_.undoStack().undo();
    EXPECT_NEAR(bore(document_), 67.0, 1e-12);
}

TEST_F(DocumentTest, DragBackToWhereItBeganLeavesNoStep) {
    const double start = bore(document_);
    document_.apply(boreEdit(start + 1.0, QStringLiteral("bore")));
    document_.apply(boreEdit(start, QStringLiteral("bore")));
    document_.finishEdit();
    EXPECT_EQ(document_.undoStack().count(), 0);
}

TEST_F(DocumentTest, RefusedEditKeepsTheDesignAndSaysTheRule) {
    const design::Design before = document_.design();
    QSignalSpy refused(&document_, &Document::refused);
    const Problems problems = document_.apply(boreEdit(-4.0));
    ASSERT_FALSE(problems.empty());
    EXPECT_EQ(problems.front().path, "/mechanism/bore_mm");
    EXPECT_NE(problems.front().message.english().find("-4"), std::string::npos);
    EXPECT_EQ(document_.design(), before);
    EXPECT_EQ(refused.count(), 1);
    EXPECT_EQ(document_.undoStack().count(), 0);
}

TEST_F(DocumentTest, RuleAcrossFieldsRefusesTheWholeEdit) {
    // One span alone breaks the rule that spans add up to 360° over the lobes.
    const design::Design before = document_.design();
    const Problems problems = document_.apply(
        {QStringLiteral("Change span"), {{"/tracks/inlet/segments/0/span_deg", 40.0}}, {}, {}});
    EXPECT_FALSE(problems.empty());
    EXPECT_EQ(document_.design(), before);
}

TEST_F(DocumentTest, SavedFileReadsBackAsTheSameDesign) {
    document_.apply(boreEdit(66.25));
    const QString file = folder_.filePath(QStringLiteral("saved.lobewright.json"));
    ASSERT_FALSE(document_.save(file).has_value());
    EXPECT_FALSE(document_.isModified());
    EXPECT_EQ(document_.name(), QStringLiteral("saved"));
    Document other;
    ASSERT_TRUE(other.open(file).empty());
    EXPECT_EQ(other.design(), document_.design());
}

TEST_F(DocumentTest, FileThatCannotBeUsedKeepsDesignAndName) {
    const QString file = folder_.filePath(QStringLiteral("broken.lobewright.json"));
    QFile broken(file);
    ASSERT_TRUE(broken.open(QIODevice::WriteOnly));
    broken.write("{\"format\": \"lobewright-design\", \"format_version\": 1, \"mechanism\": 3}");
    broken.close();
    const design::Design before = document_.design();
    EXPECT_FALSE(document_.open(file).empty());
    EXPECT_EQ(document_.design(), before);
    EXPECT_EQ(document_.name(), QStringLiteral("sample"));
}

TEST_F(DocumentTest, FolderThatCannotBeWrittenIsAProblemNotALoss) {
    document_.apply(boreEdit(66.0));
    const auto problem = document_.save(folder_.filePath(QStringLiteral("none/there/x.json")));
    EXPECT_TRUE(problem.has_value());
    EXPECT_TRUE(document_.isModified());
}

TEST_F(DocumentTest, AutosaveOfALivingProgramIsNotOfferedAndOfADeadOneIs) {
    const QString recovery = folder_.filePath(QStringLiteral("recovery"));
    Autosave living(document_, recovery);
    document_.apply(boreEdit(66.0));
    living.update();
    ASSERT_TRUE(QFile::exists(living.file()));

    Document other;
    other.start(sampleDesign(), QStringLiteral("other"));
    const Autosave second(other, recovery);
    EXPECT_TRUE(second.leftovers().empty());

    // What a crash leaves: the copy, without anybody who holds its lock.
    const QString dead = recovery + QStringLiteral("/dead.lobewright.json");
    ASSERT_TRUE(QFile::copy(living.file(), dead));
    const auto left = second.leftovers();
    ASSERT_EQ(left.size(), 1U);
    const auto design = design::loadDesign(left.front().file.toStdString());
    ASSERT_TRUE(design);
    EXPECT_EQ(*design, document_.design());
    Autosave::discard(left.front());
    EXPECT_TRUE(second.leftovers().empty());
}

TEST_F(DocumentTest, AutosaveGoesWhenTheWorkIsSaved) {
    Autosave autosave(document_, folder_.filePath(QStringLiteral("recovery")));
    document_.apply(boreEdit(66.0));
    autosave.update();
    EXPECT_TRUE(QFile::exists(autosave.file()));
    ASSERT_FALSE(document_.save(folder_.filePath(QStringLiteral("x.lobewright.json"))));
    EXPECT_FALSE(QFile::exists(autosave.file()));
}
