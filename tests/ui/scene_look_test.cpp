#include "tests/ui/scene_fixture.h"
#include "ui/base/look.h"
#include "ui/base/palette.h"

#include <QDir>
#include <QPainter>
#include <gtest/gtest.h>

namespace lobewright::ui::test {
namespace {

QStringList actionNames() {
    return QDir(QStringLiteral(":/icons/actions")).entryList({QStringLiteral("*.svg")});
}

double inkShare(const QImage& image) {
    int inked = 0;
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x)
            inked += qAlpha(image.pixel(x, y)) > 64 ? 1 : 0;
    }
    return static_cast<double>(inked) / (image.width() * image.height());
}

TEST(Icons, EveryActionIconDrawsInTheInkOfItsTheme) {
    const QStringList names = actionNames();
    ASSERT_GE(names.size(), 20);
    for (const bool dark : {false, true}) {
        QWidget widget;
        useTones(widget, dark);
        for (QString name : names) {
            name.chop(4);
            const QImage image = actionIcon(name, widget).pixmap(24, 24).toImage();
            ASSERT_EQ(image.width(), std::lround(24 * widget.devicePixelRatio()))
                << name.toStdString();
            EXPECT_GT(inkShare(image), 0.01) << name.toStdString();
            EXPECT_LT(inkShare(image), 0.75) << name.toStdString();
        }
        EXPECT_TRUE(actionIcon(QStringLiteral("no-such-icon"), widget).isNull());
    }
    EXPECT_GT(inkShare(programIcon().pixmap(64, 64).toImage()), 0.7);
}

TEST(Icons, PictureShowsTheTheme) {
    for (const bool dark : {false, true}) {
        class Sheet : public QWidget {
          public:
            void paintEvent(QPaintEvent*) override {
                QPainter painter(this);
                painter.fillRect(rect(), palette().window());
                int i = 0;
                for (QString name : actionNames()) {
                    name.chop(4);
                    const QRect box(8 + 90 * (i % 8), 8 + 70 * (i / 8), 32, 32);
                    actionIcon(name, *this).paint(&painter, box);
                    painter.setPen(palette().text().color());
                    painter.drawText(box.adjusted(-4, 34, 60, 22), name);
                    ++i;
                }
                programIcon().paint(&painter, QRect(8, 300, 128, 128));
                programIcon().paint(&painter, QRect(160, 300, 48, 48));
                programIcon().paint(&painter, QRect(230, 300, 24, 24));
            }
        } sheet;
        useTones(sheet, dark);
        sheet.resize(730, 440);
        expectPicture(sheet, dark ? QStringLiteral("icons-dark") : QStringLiteral("icons-light"));
    }
}

TEST(Theme, NamesReadBackAsTheSameTheme) {
    for (const Theme theme : {Theme::system, Theme::light, Theme::dark})
        EXPECT_EQ(themeNamed(nameOf(theme)), theme);
    EXPECT_EQ(themeNamed(QStringLiteral("mauve")), Theme::system);
}

} // namespace
} // namespace lobewright::ui::test
