#include "ui/base/look.h"

#include "ui/base/palette.h"

#include <QApplication>
#include <QFile>
#include <QPainter>
#include <QPixmap>
#include <QStyleFactory>
#include <QSvgRenderer>
#include <QToolTip>
#include <QWidget>

namespace lobewright::ui {

namespace {

// Drawn on demand, so that one file serves every size and both themes.
QPixmap drawn(QByteArray svg, const QColor& ink, int size) {
    svg.replace("currentColor", ink.name().toLatin1());
    QSvgRenderer renderer(svg);
    QPixmap pixmap(size, size);
    pixmap.fill(Qt::transparent);
    QPainter painter(&pixmap);
    renderer.render(&painter);
    return pixmap;
}

} // namespace

Theme themeNamed(const QString& name) {
    if (name == QLatin1String("light"))
        return Theme::light;
    return name == QLatin1String("dark") ? Theme::dark : Theme::system;
}

QString nameOf(Theme theme) {
    switch (theme) {
    case Theme::light:
        return QStringLiteral("light");
    case Theme::dark:
        return QStringLiteral("dark");
    case Theme::system:
        break;
    }
    return QStringLiteral("system");
}

void applyLook(QApplication& application, Theme theme) {
    // What the system wants is read once, before its palette is replaced.
    static const bool systemIsDark = Palette::of(application.palette()).isDark;
    application.setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
    const bool dark = theme == Theme::dark || (theme == Theme::system && systemIsDark);
    const QPalette palette = (dark ? Palette::darkTones() : Palette::lightTones()).widgetPalette();
    QApplication::setPalette(palette);
    QToolTip::setPalette(palette);
    QApplication::setWindowIcon(programIcon());
}

QIcon programIcon() {
    return QIcon(QStringLiteral(":/icons/lobewright.svg"));
}

QIcon actionIcon(const QString& name, const QWidget& widget) {
    QFile file(QStringLiteral(":/icons/actions/%1.svg").arg(name));
    if (!file.open(QIODevice::ReadOnly))
        return {};
    const QByteArray svg = file.readAll();
    const Palette& tones = Palette::of(widget);
    QIcon icon;
    for (const int size : {16, 20, 24, 32, 48, 64}) {
        icon.addPixmap(drawn(svg, tones.ink, size), QIcon::Normal);
        icon.addPixmap(drawn(svg, tones.tint(tones.ink, 0.35), size), QIcon::Disabled);
    }
    return icon;
}

} // namespace lobewright::ui
