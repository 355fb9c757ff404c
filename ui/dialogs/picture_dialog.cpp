#include "ui/dialogs/picture_dialog.h"

#include "core/units.h"
#include "ui/base/controls.h"
#include "ui/base/core_text.h"
#include "ui/base/last_folder.h"
#include "ui/base/message_line.h"
#include "ui/base/units.h"
#include "ui/dialogs/lift_import_dialog.h"
#include "ui/document/document.h"
#include "ui/panels/number_edit.h"
#include "ui/picture/picture_file.h"
#include "ui/picture/picture_view.h"
#include "ui/picture/readings_table.h"

#include <QButtonGroup>
#include <QDialogButtonBox>
#include <QDragEnterEvent>
#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QMimeData>
#include <QPushButton>
#include <QShortcut>
#include <QSpinBox>
#include <QToolButton>
#include <QVBoxLayout>

namespace lobewright::ui {

namespace {
constexpr int readingsWidth = 400;
const auto millimetres = QStringLiteral("mm");
} // namespace

PictureDialog::PictureDialog(Document& document, QWidget* parent)
    : QDialog(parent), document_(document) {
    setObjectName(QStringLiteral("picture"));
    setWindowTitle(tr("Measure a picture"));
    setAcceptDrops(true);
    auto* column = new QVBoxLayout(this);
    column->addWidget(buildHead());
    auto* line = new QHBoxLayout;
    column->addLayout(line, 1);
    line->addWidget(buildTools());
    view_ = new PictureView(this);
    line->addWidget(view_, 1);
    line->addWidget(buildReadings());
    message_ = messageLine(2, this);
    column->addWidget(message_);
    auto* buttons = footOf(*this, QDialogButtonBox::Cancel);
    apply_ = addButton(*buttons, tr("&Apply to the inputs"), QDialogButtonBox::AcceptRole, "apply");
    for (QAbstractButton* button : buttons->buttons())
        static_cast<QPushButton*>(button)->setAutoDefault(false);
    column->addWidget(buttons);
    connect(buttons, &QDialogButtonBox::accepted, this, &PictureDialog::apply);
    connect(view_, &PictureView::changed, this, &PictureDialog::showMarks);
    connect(view_, &PictureView::scalePlaced, this, [this] {
        length_->setFocus();
        length_->selectAll();
    });
    connect(new QShortcut(QKeySequence::Undo, this), &QShortcut::activated, view_,
            &PictureView::undo);
    connect(new QShortcut(QKeySequence::Redo, this), &QShortcut::activated, view_,
            &PictureView::redo);
    choose(PictureTool::scale);
    showMarks();
    resize(1240, 740);
}

QWidget* PictureDialog::buildHead() {
    auto* head = new QWidget(this);
    auto* line = new QHBoxLayout(head);
    line->setContentsMargins(0, 0, 0, 0);
    auto* open = new QPushButton(tr("&Open a picture…"), head);
    open->setAutoDefault(false);
    connect(open, &QPushButton::clicked, this, &PictureDialog::askForPicture);
    line->addWidget(open);
    name_ = new QLabel(head);
    line->addWidget(name_);
    page_ = new QSpinBox(head);
    page_->setObjectName(QStringLiteral("page"));
    page_->setPrefix(tr("Page "));
    page_->setMinimum(1);
    page_->hide();
    connect(page_, &QSpinBox::valueChanged, this,
            [this](int page) { openPicture(file_, page - 1); });
    line->addWidget(page_);
    line->addStretch(1);
    auto* caution = new QLabel(tr("In a photograph near parts look larger: measure in the plane "
                                  "in which the scale was set."),
                               head);
    line->addWidget(caution);
    return head;
}

QWidget* PictureDialog::buildTools() {
    auto* tools = new QWidget(this);
    auto* column = new QVBoxLayout(tools);
    column->setContentsMargins(0, 0, 0, 0);
    const auto addButton = [&](const QString& text, const QString& help) {
        auto* button = new QToolButton(tools);
        button->setText(text);
        button->setToolTip(help);
        button->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
        column->addWidget(button);
        return button;
    };
    auto* group = new QButtonGroup(this);
    for (const PictureTool tool : pictureTools) {
        QToolButton* button = addButton(toolName(tool), toolHelp(tool));
        button->setCheckable(true);
        button->setObjectName(QStringLiteral("tool%1").arg(static_cast<int>(tool)));
        group->addButton(button);
        connect(button, &QToolButton::clicked, this, [this, tool] { choose(tool); });
        tools_.push_back(button);
    }
    column->addSpacing(12);
    undo_ = addButton(tr("&Undo"), tr("Takes back the last click (Ctrl+Z)"));
    redo_ = addButton(tr("Red&o"), tr("Ctrl+Shift+Z"));
    connect(undo_, &QToolButton::clicked, this, [this] { view_->undo(); });
    connect(redo_, &QToolButton::clicked, this, [this] { view_->redo(); });
    QToolButton* all = addButton(tr("S&how all"), tr("Home; the wheel zooms, the right button "
                                                     "moves the picture"));
    connect(all, &QToolButton::clicked, this, [this] { view_->showAll(); });
    column->addStretch(1);
    return tools;
}

QWidget* PictureDialog::buildReadings() {
    auto* side = new QWidget(this);
    side->setFixedWidth(readingsWidth);
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(0, 0, 0, 0);
    auto* line = new QHBoxLayout;
    auto* label = new QLabel(tr("Sca&le length"), side);
    length_ = new NumberEdit(side);
    length_->setObjectName(QStringLiteral("length"));
    length_->setMayBeEmpty(true);
    length_->setDigits(7);
    label->setBuddy(length_);
    line->addWidget(label);
    line->addWidget(length_, 1);
    line->addWidget(new QLabel(unitFor(millimetres).text, side));
    column->addLayout(line);
    connect(length_, &NumberEdit::entered, this, &PictureDialog::setScaleLength);
    connect(length_, &NumberEdit::stepped, this, [this](double number) { setScaleLength(number); });
    readings_ = new ReadingsTable(side);
    readings_->setDesign(document_.design());
    column->addWidget(readings_, 1);
    connect(readings_, &ReadingsTable::wanted, this,
            [this](const PictureMarks& marks) { view_->change(marks); });
    connect(readings_, &ReadingsTable::lobeWanted, this, &PictureDialog::importLobe);
    return side;
}

void PictureDialog::askForPicture() {
    const QString file =
        QFileDialog::getOpenFileName(this, tr("Open a picture"), lastFolder(), pictureFilter());
    if (!file.isEmpty())
        openPicture(file);
}

bool PictureDialog::openPicture(const QString& file, int page) {
    const LoadedPicture loaded = loadPicture(file, page);
    if (!loaded.problem.isEmpty()) {
        say(loaded.problem, true);
        return false;
    }
    file_ = file;
    name_->setText(QFileInfo(file).fileName());
    {
        const QSignalBlocker quiet(page_);
        page_->setMaximum(loaded.pages);
        page_->setValue(page + 1);
        page_->setVisible(loaded.pages > 1);
    }
    length_->setNumber(std::nullopt);
    view_->setImage(loaded.image);
    view_->setFocus();
    choose(PictureTool::scale);
    return true;
}

void PictureDialog::setScaleLength(std::optional<double> shown) {
    PictureMarks marks = view_->marks();
    marks.scaleLength = shown ? unitFor(millimetres).metric(*shown) * units::millimetre : 0.0;
    view_->change(marks);
}

void PictureDialog::choose(PictureTool tool) {
    for (size_t i = 0; i < tools_.size(); ++i)
        tools_[i]->setChecked(pictureTools[i] == tool);
    view_->setTool(tool);
    view_->setFocus();
    say(toolHelp(tool));
}

void PictureDialog::showMarks() {
    const PictureMarks& marks = view_->marks();
    readings_->show(marks);
    if (!length_->hasFocus()) {
        length_->setNumber(
            marks.scaleLength > 0.0
                ? std::optional(unitFor(millimetres).shown(marks.scaleLength / units::millimetre))
                : std::nullopt);
    }
    undo_->setEnabled(view_->canUndo());
    redo_->setEnabled(view_->canRedo());
    apply_->setEnabled(
        !measuredEdit(document_.design(), marks, QFileInfo(file_).fileName()).changes.empty());
    const auto scale = marks.pixelScale();
    if (marks.scale && marks.scaleLength > 0.0 && !scale) {
        say(coreText(scale.problems().front().message), true);
    } else if (scale && view_->tool() == PictureTool::scale) {
        say(tr("One pixel is %1. Choose what to measure.")
                .arg(quantityText(scale->pixel() / units::millimetre, millimetres)));
    }
}

void PictureDialog::importLobe(int reading, End end) {
    const PictureMarks& marks = view_->marks();
    const auto scale = marks.pixelScale();
    if (!scale) {
        say(tr("Set the scale first."), true);
        return;
    }
    const int lobes = document_.design().tracks[end].lobes;
    const auto table =
        picture::liftTable(*scale, marks.readings[static_cast<size_t>(reading)].places, lobes);
    if (!table) {
        say(coreText(table.problems().front().message), true);
        return;
    }
    LiftImportDialog dialog(document_, this);
    dialog.takeTable(QByteArray::fromStdString(*table), QFileInfo(file_).fileName(), end,
                     picture::traceTolerance(*scale));
    if (dialog.exec() == QDialog::Accepted)
        readings_->setDesign(document_.design());
}

void PictureDialog::apply() {
    const Edit edit = measuredEdit(document_.design(), view_->marks(), QFileInfo(file_).fileName());
    const Problems problems = document_.apply(edit);
    if (problems.empty()) {
        accept();
        return;
    }
    QStringList words;
    for (const Problem& problem : problems)
        words << coreText(problem.message);
    words.removeDuplicates();
    say(words.join(QLatin1Char(' ')), true);
}

void PictureDialog::dragEnterEvent(QDragEnterEvent* event) {
    if (event->mimeData()->hasUrls() && event->mimeData()->urls().front().isLocalFile())
        event->acceptProposedAction();
}

void PictureDialog::dropEvent(QDropEvent* event) {
    openPicture(event->mimeData()->urls().front().toLocalFile());
}

void PictureDialog::say(const QString& text, bool isProblem) {
    setMessage(*message_, text, isProblem);
}

} // namespace lobewright::ui
