#include "ui/base/palette.h"

#include <QPalette>
#include <QWidget>

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

namespace {

QColor mixed(const QColor& a, const QColor& b, double share) {
    const auto blend = [share](float from, float to) {
        return from + static_cast<float>(share) * (to - from);
    };
    return QColor::fromRgbF(blend(a.redF(), b.redF()), blend(a.greenF(), b.greenF()),
                            blend(a.blueF(), b.blueF()));
}

Palette makeLight() {
    Palette p;
    p.paper = QColor("#fbfaf7");
    p.panel = QColor("#f1efe9");
    p.ink = QColor("#22272e");
    p.quiet = QColor("#656b73");
    p.grid = QColor("#dcd9d1");
    p.inlet = QColor("#1b64b0");
    p.exhaust = QColor("#a35600");
    p.warning = QColor("#96186c");
    p.crank = QColor("#a9002f");
    p.gearedCrank = QColor("#075b31");
    p.fourStroke = QColor("#761fce");
    p.fourStrokeSupplied = QColor("#107192");
    p.cursor = QColor("#3f4650");
    p.metal = QColor("#8f959e");
    p.metalPale = QColor("#d3d4d4");
    p.fresh = QColor("#cfe0f3");
    p.burnt = QColor("#d3ab84");
    p.burning = QColor("#f9d65f");
    return p;
}

Palette makeDark() {
    Palette p;
    p.paper = QColor("#1d2126");
    p.panel = QColor("#292e35");
    p.ink = QColor("#e6e4df");
    p.quiet = QColor("#a2a7ad");
    p.grid = QColor("#3a4048");
    p.inlet = QColor("#5aa7ee");
    p.exhaust = QColor("#f0a23c");
    p.warning = QColor("#ff5a8f");
    p.crank = QColor("#ffdc06");
    p.gearedCrank = QColor("#b6e3a1");
    p.fourStroke = QColor("#cd96ba");
    p.fourStrokeSupplied = QColor("#60e5f5");
    p.cursor = QColor("#c9c7c1");
    p.metal = QColor("#7d858f");
    p.metalPale = QColor("#4a515a");
    p.fresh = QColor("#2c4866");
    p.burnt = QColor("#7a5530");
    p.burning = QColor("#b98a24");
    p.isDark = true;
    return p;
}

} // namespace

QColor Palette::tint(const QColor& colour, double share) const {
    return mixed(paper, colour, std::clamp(share, 0.0, 1.0));
}

QColor Palette::sideFill(End end) const {
    return tint(side(end), isDark ? 0.30 : 0.20);
}

QColor Palette::gas(double burntShare) const {
    constexpr double steps = 6.0;
    const double share = std::isfinite(burntShare) ? std::clamp(burntShare, 0.0, 1.0) : 0.0;
    return mixed(fresh, burnt, std::round(share * steps) / steps);
}

QColor Palette::baseline(const QColor& colour) const {
    return tint(colour, isDark ? 0.55 : 0.45);
}

const Palette& Palette::lightTones() {
    static const Palette palette = makeLight();
    return palette;
}

const Palette& Palette::darkTones() {
    static const Palette palette = makeDark();
    return palette;
}

const Palette& Palette::of(const QPalette& palette) {
    return palette.color(QPalette::Window).lightnessF() < 0.5F ? darkTones() : lightTones();
}

const Palette& Palette::of(const QWidget& widget) {
    return of(widget.palette());
}

QPalette Palette::widgetPalette() const {
    QPalette q;
    const QColor accent = isDark ? QColor("#6b7684") : QColor("#49525e");
    q.setColor(QPalette::Window, panel);
    q.setColor(QPalette::WindowText, ink);
    q.setColor(QPalette::Base, paper);
    q.setColor(QPalette::AlternateBase, tint(grid, 0.45));
    q.setColor(QPalette::Text, ink);
    q.setColor(QPalette::PlaceholderText, quiet);
    q.setColor(QPalette::Button, isDark ? QColor("#343a42") : QColor("#e9e6de"));
    q.setColor(QPalette::ButtonText, ink);
    q.setColor(QPalette::BrightText, warning);
    q.setColor(QPalette::Highlight, accent);
    q.setColor(QPalette::HighlightedText, QColor("#ffffff"));
    q.setColor(QPalette::Link, inlet);
    q.setColor(QPalette::LinkVisited, mixed(inlet, ink, 0.35));
    q.setColor(QPalette::ToolTipBase, panel);
    q.setColor(QPalette::ToolTipText, ink);
    q.setColor(QPalette::Light, isDark ? QColor("#4b525c") : QColor("#ffffff"));
    q.setColor(QPalette::Midlight, isDark ? QColor("#3f454e") : QColor("#f4f2ed"));
    q.setColor(QPalette::Mid, isDark ? QColor("#23272d") : QColor("#b9b6ae"));
    q.setColor(QPalette::Dark, isDark ? QColor("#15181c") : QColor("#9b9890"));
    q.setColor(QPalette::Shadow, QColor("#000000"));
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
        q.setColor(QPalette::Disabled, role, tint(quiet, 0.7));
    return q;
}

} // namespace lobewright::ui
