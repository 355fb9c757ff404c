#include "tests/ui/scene_fixture.h"
#include "ui/scene/section/frame_export.h"
#include "ui/scene/section/section_view.h"

#include <QTemporaryDir>
#include <gtest/gtest.h>

namespace lobewright::ui::test {
namespace {

class Frames : public ::testing::Test {
  protected:
    Frames() {
        view.resize(500, 300);
        view.showSolution(inventedSolution(twoLobeDesign()));
        cursor.setAngle(1.25);
    }
    QTemporaryDir folder;
    TurnCursor cursor;
    SectionView view{cursor};
};

TEST_F(Frames, OneTurnBecomesNumberedPicturesOfTheWantedSize) {
    const FrameExport wanted{QDir(folder.path()), QStringLiteral("section"), 8, {640, 360}};
    int told = 0;
    EXPECT_FALSE(exportFrames(view, cursor, wanted, [&](int done) {
        told = done;
        return true;
    }));
    EXPECT_EQ(told, 8);
    const QStringList files = wanted.folder.entryList({QStringLiteral("*.png")});
    ASSERT_EQ(files.size(), 8);
    EXPECT_EQ(files.front(), QStringLiteral("section-0001.png"));
    const QImage first(wanted.folder.filePath(files[0])), second(wanted.folder.filePath(files[1]));
    EXPECT_EQ(first.size(), QSize(640, 360));
    EXPECT_NE(first, second);
    EXPECT_EQ(view.size(), QSize(500, 300));
    EXPECT_DOUBLE_EQ(cursor.angle(), 1.25);
}

TEST_F(Frames, StoppingLeavesNoPictureBehind) {
    const FrameExport wanted{QDir(folder.path()), QStringLiteral("section"), 8, {640, 360}};
    const auto problem = exportFrames(view, cursor, wanted, [](int done) { return done < 3; });
    ASSERT_TRUE(problem);
    EXPECT_TRUE(problem->contains(QStringLiteral("3 of 8")));
    EXPECT_TRUE(wanted.folder.entryList({QStringLiteral("*.png")}).isEmpty());
}

TEST_F(Frames, AFolderThatIsNotThereIsNamed) {
    const FrameExport wanted{
        QDir(folder.filePath(QStringLiteral("none"))), QStringLiteral("a"), 2, {64, 64}};
    const auto problem = exportFrames(view, cursor, wanted, [](int) { return true; });
    ASSERT_TRUE(problem);
    EXPECT_TRUE(problem->contains(QStringLiteral("none/a-0001.png")));
}

} // namespace
} // namespace lobewright::ui::test
