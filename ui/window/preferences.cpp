#include "ui/window/preferences.h"

#include "ui/base/controls.h"
#include "ui/base/language.h"
#include "ui/window/playback_bar.h"

#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QPushButton>
#include <QSettings>
#include <QSpinBox>
#include <QThread>
#include <tbb/global_control.h>

#include <memory>

namespace lobewright::ui {

namespace {

const auto textSizeKey = QStringLiteral("window/textSize");
const auto autosaveKey = QStringLiteral("files/autosaveInterval");
const auto slowMotionKey = QStringLiteral("turn/slowMotion");
const auto threadsKey = QStringLiteral("solving/threads");
const auto lastKey = QStringLiteral("files/opensLast");
const auto layoutKey = QStringLiteral("window/restoresLayout");
const auto themeKey = QStringLiteral("window/theme");

/// The cap holds as long as its object lives: one at a time, for the life of the program.
void limitThreads(int threads) {
    static std::unique_ptr<tbb::global_control> limit;
    limit.reset();
    if (threads > 0) {
        limit = std::make_unique<tbb::global_control>(tbb::global_control::max_allowed_parallelism,
                                                      static_cast<size_t>(threads));
    }
}

void setTextSize(int percent) {
    static const QFont systemFont = QApplication::font();
    QFont font = systemFont;
    if (percent != 100)
        font.setPointSizeF(systemFont.pointSizeF() * percent / 100.0);
    if (font == QApplication::font())
        return;
    QApplication::setFont(font);
    // Plots take fonts and tones of their widget together, when told that the tones changed.
    for (QWidget* widget : QApplication::allWidgets()) {
        QEvent changed(QEvent::PaletteChange);
        QApplication::sendEvent(widget, &changed);
    }
}

} // namespace

Preferences Preferences::load() {
    const QSettings kept;
    Preferences all;
    Units::instance().restore();
    all.units = Units::instance().system();
    all.theme = themeNamed(kept.value(themeKey).toString());
    const auto number = [&](const QString& key, int usual, int least, int most) {
        return std::clamp(kept.value(key, usual).toInt(), least, most);
    };
    all.textSize = number(textSizeKey, all.textSize, 80, 160);
    all.autosaveInterval = number(autosaveKey, all.autosaveInterval, 2, 600);
    all.slowMotion = number(slowMotionKey, all.slowMotion, 0, 2000);
    all.threads = number(threadsKey, all.threads, 0, QThread::idealThreadCount());
    all.language = keptLanguage();
    all.restoresLayout = kept.value(layoutKey, true).toBool();
    all.opensLast = kept.value(lastKey, false).toBool();
    return all;
}

void Preferences::save() const {
    QSettings kept;
    Units::instance().setSystem(units);
    kept.setValue(themeKey, nameOf(theme));
    kept.setValue(textSizeKey, textSize);
    kept.setValue(autosaveKey, autosaveInterval);
    kept.setValue(slowMotionKey, slowMotion);
    kept.setValue(threadsKey, threads);
    keepLanguage(language);
    kept.setValue(layoutKey, restoresLayout);
    kept.setValue(lastKey, opensLast);
}

void applyToProgram(const Preferences& preferences) {
    setTextSize(preferences.textSize);
    applyLook(*qApp, preferences.theme);
    limitThreads(preferences.threads);
}

PreferencesDialog::PreferencesDialog(QWidget* parent) : QDialog(parent) {
    setWindowTitle(tr("Preferences"));
    setObjectName(QStringLiteral("preferences"));
    new QFormLayout(this);
    build();
    show(Preferences::load());
}

QComboBox* PreferencesDialog::addChoice(const char* name, const QString& label, const QString& help,
                                        const QList<std::pair<QString, QVariant>>& choices) {
    auto* box = new QComboBox(this);
    for (const auto& [text, value] : choices)
        box->addItem(text, value);
    box->setObjectName(QLatin1String(name));
    describe(*box, QString(label).remove(QLatin1Char('&')), help);
    static_cast<QFormLayout*>(layout())->addRow(label, box);
    connect(box, &QComboBox::currentIndexChanged, this, &PreferencesDialog::take);
    return box;
}

void PreferencesDialog::build() {
    auto* form = static_cast<QFormLayout*>(layout());
    units_ = addChoice("units", tr("&Units"),
                       tr("Units of every number shown and typed. Files stay metric."),
                       {{tr("Metric: mm, bar, N·m, K"), static_cast<int>(UnitSystem::metric)},
                        {tr("Inch: in, psi, lb·ft, °F"), static_cast<int>(UnitSystem::inch)}});
    theme_ = addChoice("theme", tr("&Theme"), tr("Light or dark ground for the whole program."),
                       {{tr("As the system"), nameOf(Theme::system)},
                        {tr("Light"), nameOf(Theme::light)},
                        {tr("Dark"), nameOf(Theme::dark)}});
    textSize_ = addChoice(
        "textSize", tr("Te&xt size"),
        tr("Size of all text, against the size that the system asks for."),
        {{tr("Small"), 90}, {tr("As the system"), 100}, {tr("Large"), 115}, {tr("Largest"), 130}});
    QList<std::pair<QString, QVariant>> paces = {{tr("Suited to the shaft speed"), 0}};
    for (const int factor : PlaybackBar::slowMotionFactors())
        paces.append({PlaybackBar::slowMotionText(factor), factor});
    slowMotion_ = addChoice("slowMotion", tr("&Slow motion"),
                            tr("How fast the shaft turns when a design is opened."), paces);
    language_ = addChoice("language", tr("&Language"),
                          tr("Language of menus, labels, messages and help pages. Takes effect at "
                             "the next start of the program."),
                          {{tr("As the system"), QString()},
                           {QStringLiteral("English"), QStringLiteral("en")},
                           {QStringLiteral("Deutsch"), QStringLiteral("de")}});
    const auto addNumber = [&](const char* name, const QString& label, const QString& help,
                               int least, int most) {
        auto* box = new QSpinBox(this);
        box->setRange(least, most);
        box->setObjectName(QLatin1String(name));
        describe(*box, QString(label).remove(QLatin1Char('&')), help);
        form->addRow(label, box);
        connect(box, &QSpinBox::valueChanged, this, &PreferencesDialog::take);
        return box;
    };
    autosave_ = addNumber("autosave", tr("&Autosave every"),
                          tr("Unsaved work is copied this often, to be offered again after a "
                             "crash. Your file is written only when you save."),
                          2, 600);
    autosave_->setSuffix(tr(" s"));
    threads_ = addNumber("threads", tr("&Processor threads"),
                         tr("Largest number of threads that sweeps, maps and comparisons may use."),
                         0, QThread::idealThreadCount());
    threads_->setSpecialValueText(tr("all"));
    layout_ = new QCheckBox(tr("&Restore the window as it was left"), this);
    layout_->setObjectName(QStringLiteral("layout"));
    layout_->setToolTip(tr("Size, panes and arrangement of the window at the next start."));
    form->addRow(layout_);
    last_ = new QCheckBox(tr("Start with the &design of last time"), this);
    last_->setObjectName(QStringLiteral("last"));
    last_->setToolTip(tr("Otherwise the program starts with a sample."));
    form->addRow(last_);
    for (const QCheckBox* box : {layout_, last_})
        connect(box, &QCheckBox::toggled, this, &PreferencesDialog::take);
    auto* buttons = footOf(*this, QDialogButtonBox::RestoreDefaults | QDialogButtonBox::Close);
    buttons->button(QDialogButtonBox::RestoreDefaults)
        ->setToolTip(tr("All preferences as they were when the program was new"));
    connect(buttons->button(QDialogButtonBox::RestoreDefaults), &QPushButton::clicked, this,
            [this] {
                show(Preferences());
                take();
            });
    form->addRow(buttons);
}

void PreferencesDialog::show(const Preferences& preferences) {
    showing_ = true;
    const auto choose = [](QComboBox& box, const QVariant& value) {
        box.setCurrentIndex(std::max(0, box.findData(value)));
    };
    choose(*units_, static_cast<int>(preferences.units));
    choose(*theme_, nameOf(preferences.theme));
    choose(*textSize_, preferences.textSize);
    choose(*slowMotion_, preferences.slowMotion);
    choose(*language_, preferences.language);
    autosave_->setValue(preferences.autosaveInterval);
    threads_->setValue(preferences.threads);
    layout_->setChecked(preferences.restoresLayout);
    last_->setChecked(preferences.opensLast);
    showing_ = false;
}

void PreferencesDialog::take() {
    if (showing_)
        return;
    Preferences all;
    all.units = static_cast<UnitSystem>(units_->currentData().toInt());
    all.theme = themeNamed(theme_->currentData().toString());
    all.textSize = textSize_->currentData().toInt();
    all.slowMotion = slowMotion_->currentData().toInt();
    all.language = language_->currentData().toString();
    all.autosaveInterval = autosave_->value();
    all.threads = threads_->value();
    all.restoresLayout = layout_->isChecked();
    all.opensLast = last_->isChecked();
    all.save();
    Q_EMIT changed(all);
}

} // namespace lobewright::ui
