#include "ui/document/document.h"

#include "core/design/fields.h"
#include "core/design/file.h"
#include "core/design/schedules.h"
#include "core/files/write_file.h"
#include "ui/document/change_design.h"

#include <QFileInfo>

namespace lobewright::ui {

namespace {

/// The edited design, or every rule that it breaks.
Result<design::Design> edited(const design::Design& design, const Edit& edit) {
    // What views show, and make whole designs from, has the values of its speed.
    design::Design candidate =
        edit.replacement ? design::withFixedValuesOf(*edit.replacement, design) : design;
    candidate.snapshots = edit.snapshots.value_or(design.snapshots);
    if (edit.knowledge)
        candidate.knowledge = *edit.knowledge;
    for (const FieldChange& change : edit.changes) {
        auto next = design::withField(candidate, change.path, change.value);
        if (!next)
            return next.problems();
        candidate = std::move(next).value();
    }
    if (!edit.knowledge)
        candidate.knowledge = design::settledKnowledge(candidate);
    // The snapshots there are keep the rules: a drag need not ask each of them again.
    Problems problems =
        edit.snapshots ? design::validate(candidate) : design::validateEngine(candidate);
    const Problems unknown = design::brokenKnowledgeRules(candidate);
    problems.insert(problems.end(), unknown.begin(), unknown.end());
    if (!problems.empty())
        return problems;
    return candidate;
}

QString baseName(const QString& file) {
    QString name = QFileInfo(file).fileName();
    for (const auto* suffix : {".json", ".lobewright"}) {
        if (name.endsWith(QLatin1String(suffix), Qt::CaseInsensitive))
            name.chop(static_cast<int>(qstrlen(suffix)));
    }
    return name;
}

} // namespace

Document::Document(QObject* parent) : QObject(parent) {
    connect(&undoStack_, &QUndoStack::cleanChanged, this,
            [this](bool clean) { Q_EMIT modifiedChanged(!clean); });
    connect(&watch_, &FileWatch::changed, this, &Document::fileChanged);
}

QString Document::name() const {
    return path_.isEmpty() ? name_ : baseName(path_);
}

Problems Document::open(const QString& file) {
    const QByteArray digest = FileWatch::digestOf(file); // before: what is written now is noticed
    return open(file, design::loadDesign(file.toStdString()), digest);
}

Problems Document::open(const QString& file, Result<design::Design> loaded,
                        const QByteArray& digest) {
    if (!loaded)
        return loaded.problems();
    replace(std::move(loaded).value(), QFileInfo(file).absoluteFilePath(), baseName(file), digest);
    return {};
}

void Document::start(design::Design design, const QString& name) {
    replace(std::move(design), {}, name, {});
}

void Document::recover(design::Design design, const QString& name, const QString& file,
                       const QByteArray& digest) {
    replace(std::move(design), file, name, digest);
    undoStack_.resetClean();
}

std::optional<Problem> Document::save(const QString& file) {
    finishEdit();
    const std::string text = design::writeDesign(design_);
    if (auto problem = files::writeFile(file.toStdString(), text))
        return problem;
    path_ = QFileInfo(file).absoluteFilePath();
    watch_.watch(path_, FileWatch::digest(QByteArray::fromStdString(text)));
    undoStack_.setClean();
    Q_EMIT pathChanged();
    return std::nullopt;
}

Problems Document::apply(const Edit& edit) {
    auto candidate = edited(design_, edit);
    if (!candidate) {
        Q_EMIT refused(candidate.problems());
        return candidate.problems();
    }
    if (*candidate == design_)
        return {};
    if (edit.mergeKey.isEmpty() || edit.mergeKey != dragKey_)
        finishEdit();
    if (!edit.mergeKey.isEmpty() && !drag_) {
        drag_ = ++lastDrag_;
        dragKey_ = edit.mergeKey;
    }
    undoStack_.push(new ChangeDesign(*this, design_, std::move(candidate).value(), edit.text,
                                     edit.mergeKey, drag_));
    return {};
}

void Document::finishEdit() {
    if (!drag_)
        return;
    endDrag();
    Q_EMIT editFinished();
}

void Document::endDrag() {
    drag_ = 0;
    dragKey_.clear();
}

void Document::setDesign(const design::Design& design, Change change) {
    if (change != Change::dragging)
        endDrag();
    design_ = design;
    ++revision_;
    Q_EMIT designChanged(change);
}

void Document::reload(const design::Design& design) {
    finishEdit();
    Edit edit;
    edit.text = tr("Reload the file");
    edit.replacement = design;
    edit.snapshots = design.snapshots;
    apply(edit);
    undoStack_.setClean();
    watch_.watch(path_);
}

// A design that the list of undo holds would be gone with that list.
// NOLINTNEXTLINE(performance-unnecessary-value-param)
void Document::replace(design::Design design, const QString& file, const QString& name,
                       const QByteArray& digest) {
    path_ = file;
    watch_.watch(file, digest);
    name_ = name;
    undoStack_.clear();
    setDesign(design, Change::replaced);
    Q_EMIT pathChanged();
}

} // namespace lobewright::ui
