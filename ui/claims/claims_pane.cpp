#include "ui/claims/claims_pane.h"

#include "core/claims/claims_file.h"
#include "core/claims/claims_report.h"
#include "ui/base/controls.h"
#include "ui/base/core_text.h"
#include "ui/base/dialogs.h"
#include "ui/base/file_to_write.h"
#include "ui/base/last_folder.h"
#include "ui/base/save_bytes.h"
#include "ui/claims/claims_form.h"
#include "ui/claims/claims_report_view.h"

#include <QApplication>
#include <QBuffer>
#include <QClipboard>
#include <QFile>
#include <QFileDialog>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QPageSize>
#include <QPdfWriter>
#include <QPrintDialog>
#include <QPrinter>
#include <QScrollArea>
#include <QSplitter>
#include <QToolButton>
#include <QUndoCommand>
#include <QVBoxLayout>

namespace lobewright::ui {

namespace {
constexpr int sheetWidth = 360; ///< of labels and what is typed beside them
} // namespace

/// Claims before and after one entry.
class ClaimsPane::Change : public QUndoCommand {
  public:
    Change(ClaimsPane& pane, study::Claims before, study::Claims after, const QString& what)
        : QUndoCommand(what), pane_(pane), before_(std::move(before)), after_(std::move(after)) {}
    void undo() override { pane_.set(before_); }
    void redo() override { pane_.set(after_); }

  private:
    ClaimsPane& pane_;
    study::Claims before_, after_;
};

ClaimsPane::ClaimsPane(QWidget* parent)
    : QWidget(parent), form_(new ClaimsForm), view_(new ClaimsReportView(this)) {
    setAccessibleName(tr("Claims check"));
    connect(qApp, &QApplication::focusChanged, this, [this](QWidget*, QWidget* now) {
        if (qobject_cast<QLineEdit*>(now) && isAncestorOf(now))
            now->installEventFilter(this);
    });
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(4, 4, 4, 4);
    buildBar(*column);
    auto* split = new QSplitter(Qt::Horizontal, this);
    auto* scroll = new QScrollArea(split);
    makeScroll(*scroll, form_);
    split->addWidget(scroll);
    split->addWidget(view_);
    split->setStretchFactor(0, 0);
    split->setStretchFactor(1, 1);
    split->setSizes({sheetWidth, 3 * sheetWidth});
    split->setChildrenCollapsible(false);
    scroll->setMinimumWidth(sheetWidth / 2);
    connect(form_, &ClaimsForm::shown, scroll,
            [scroll](QWidget* entry) { scroll->ensureWidgetVisible(entry); });
    connect(view_, &ClaimsReportView::entryWanted, form_, &ClaimsForm::focusEntry);
    connect(view_, &ClaimsReportView::figureWanted, this, &ClaimsPane::figureWanted);
    connect(view_, &ClaimsReportView::fieldWanted, this, &ClaimsPane::fieldWanted);
    connect(view_, &ClaimsReportView::resultWanted, this, &ClaimsPane::resultWanted);
    column->addWidget(split, 1);
    auto* caution = new QLabel(
        tr("Estimates only: a verdict compares published numbers with arithmetic and published "
           "bands, not with any engine that was built."),
        this);
    caution->setWordWrap(true);
    column->addWidget(caution);
    connect(form_, &ClaimsForm::edited, this, &ClaimsPane::take);
    judge();
}

study::VerdictPage ClaimsPane::verdictOn(const SolutionPointer& solution) const {
    return study::verdictPage(claims_, solution.get(), bands_);
}

void ClaimsPane::judge() {
    verdict_ = verdictOn(design_);
    form_->setWanted(verdict_.wanted);
    view_->show(verdict_);
}

void ClaimsPane::buildBar(QVBoxLayout& column) {
    auto* bar = new QHBoxLayout;
    const auto addButton = [&](const QString& text, const QString& hint, auto act) {
        auto* button = wordButton(text, hint, this);
        connect(button, &QToolButton::clicked, this, act);
        bar->addWidget(button);
        return button;
    };
    addButton(tr("Open…"), tr("Open a claims file"), [this] { askForFile(); });
    addButton(tr("Save…"), tr("Save as a claims file"), [this] { askWhereToSave(); });
    addButton(tr("Example"), tr("Fill in an invented example"), [this] { fillInExample(); });
    auto* undo = addButton(tr("Undo"), {}, [this] { undoStack_.undo(); });
    auto* redo = addButton(tr("Redo"), {}, [this] { undoStack_.redo(); });
    bar->addStretch(1);
    column.addLayout(bar);
    const auto update = [this, undo, redo] {
        undo->setEnabled(undoStack_.canUndo());
        redo->setEnabled(undoStack_.canRedo());
        undo->setToolTip(tr("Undo %1").arg(undoStack_.undoText()));
        redo->setToolTip(tr("Redo %1").arg(undoStack_.redoText()));
    };
    connect(&undoStack_, &QUndoStack::indexChanged, this, update);
    update();
}

bool ClaimsPane::takeUndoKeys(QEvent* event) {
    if (event->type() != QEvent::ShortcutOverride && event->type() != QEvent::KeyPress)
        return false;
    auto* key = static_cast<QKeyEvent*>(event);
    const bool undo = key->matches(QKeySequence::Undo);
    if (!undo && !key->matches(QKeySequence::Redo))
        return false;
    event->accept();
    if (event->type() == QEvent::KeyPress)
        undo ? undoStack_.undo() : undoStack_.redo();
    return true;
}

bool ClaimsPane::event(QEvent* event) {
    return takeUndoKeys(event) || QWidget::event(event);
}

/// A line that is being typed in undoes its own typing; one that is not leaves the key to the pane.
bool ClaimsPane::eventFilter(QObject* watched, QEvent* event) {
    const auto* edit = qobject_cast<QLineEdit*>(watched);
    const bool typing = edit && edit->isModified() && edit->isUndoAvailable();
    return (!typing && takeUndoKeys(event)) || QWidget::eventFilter(watched, event);
}

void ClaimsPane::take(const study::Claims& claims, const QString& what) {
    if (claims != claims_)
        undoStack_.push(new Change(*this, claims_, claims, what));
}

void ClaimsPane::fillIn(const study::Claims& claims) {
    take(claims, tr("Published figures"));
}

void ClaimsPane::set(const study::Claims& claims) {
    claims_ = claims;
    form_->show(claims_);
    judge();
    Q_EMIT claimsChanged(claims_);
    Q_EMIT stateChanged();
}

void ClaimsPane::showSolution(const SolutionPointer& solution) {
    design_ = solution && solution->gas ? solution : nullptr;
    judge();
}

void ClaimsPane::showBands(const std::optional<study::ResultQuantileMap>& bands) {
    bands_ = bands;
    judge();
}

Problems ClaimsPane::open(const QString& file) {
    const auto claims = study::loadClaims(file.toStdString());
    if (!claims)
        return claims.problems();
    take(*claims, tr("open a file"));
    return {};
}

std::optional<Problem> ClaimsPane::save(const QString& file) {
    return study::saveClaims(claims_, file.toStdString());
}

void ClaimsPane::askForFile() {
    const QString file = QFileDialog::getOpenFileName(this, tr("Open claims"), lastFolder(),
                                                      tr("Claims (*.claims.json);;All files (*)"));
    if (file.isEmpty())
        return;
    const Problems problems = open(file);
    if (!problems.empty())
        showProblems(this, file, problems);
}

void ClaimsPane::askWhereToSave() {
    const QString file =
        fileToWrite(this, tr("Save claims"), lastFolder(), tr("Claims (*.claims.json)"));
    if (file.isEmpty())
        return;
    if (const auto problem = save(file))
        showProblems(this, file, {*problem});
}

void ClaimsPane::fillInExample() {
    QFile file(QStringLiteral(":/claims/irrigation-set.claims.json"));
    file.open(QIODevice::ReadOnly);
    const auto claims = study::readClaims(file.readAll().toStdString());
    Q_ASSERT(claims);
    take(*claims, tr("fill in the example"));
}

void ClaimsPane::addOptions(QMenu& menu) {
    menu.addAction(tr("&Copy the report"), this, [this] {
        constexpr std::size_t width = 100;
        QApplication::clipboard()->setText(
            QString::fromStdString(study::claimsText(verdict_, width, [](const Message& text) {
                return localNumbers(coreText(text)).toStdString();
            })));
    });
    menu.addAction(tr("&Save the findings…"), this, &ClaimsPane::askWhereToSaveFindings);
    menu.addAction(tr("&Print the findings…"), this, [this] {
        QPrinter printer(QPrinter::HighResolution);
        printer.setDocName(tr("Claims check"));
        if (QPrintDialog(&printer, this).exec() == QDialog::Accepted)
            view_->printOn(printer);
    });
    menu.addSeparator();
    menu.addAction(tr("C&lear the sheet"), this, [this] { take({}, tr("clear the sheet")); });
}

std::optional<Problem> ClaimsPane::saveFindings(const QString& file) {
    QByteArray bytes;
    if (file.endsWith(QLatin1String(".pdf"), Qt::CaseInsensitive)) {
        QBuffer buffer(&bytes);
        buffer.open(QIODevice::WriteOnly);
        QPdfWriter writer(&buffer);
        writer.setPageSize(QPageSize(QPageSize::A4));
        writer.setTitle(tr("Claims check"));
        view_->printOn(writer);
    } else {
        const bool isJson = file.endsWith(QLatin1String(".json"), Qt::CaseInsensitive);
        bytes = QByteArray::fromStdString(isJson ? study::claimsJson(verdict_)
                                                 : study::claimsText(verdict_));
    }
    return saveBytes(file, bytes);
}

void ClaimsPane::askWhereToSaveFindings() {
    const QString file =
        fileToWrite(this, tr("Save the findings"), lastFolder() + QStringLiteral("/findings.pdf"),
                    tr("Findings (*.pdf *.txt *.json)"));
    if (file.isEmpty())
        return;
    if (const auto problem = saveFindings(file))
        showProblems(this, file, {*problem});
}

QString ClaimsPane::state() const {
    return QString::fromStdString(study::writeClaims(claims_));
}

void ClaimsPane::restoreState(const QString& state) {
    const auto claims = study::readClaims(state.toStdString());
    if (!claims)
        return; // of a program with other keys
    set(*claims);
    undoStack_.clear();
}

} // namespace lobewright::ui
