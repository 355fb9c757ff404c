#include "ui/handles/exact_entry.h"

#include <QApplication>
#include <QDoubleSpinBox>
#include <QFormLayout>
#include <QKeyEvent>
#include <QLabel>

namespace lobewright::ui {

ExactEntry::ExactEntry(const Handle& handle, QWidget* parent) : QFrame(parent) {
    setFrameShape(QFrame::StyledPanel);
    setAutoFillBackground(true);
    setAccessibleName(tr("Exact value of %1").arg(handle.label));
    auto* form = new QFormLayout(this);
    form->setContentsMargins(8, 8, 8, 8);
    form->addRow(new QLabel(handle.label, this));
    for (const auto& axis : handle.axes) {
        const Unit unit = unitFor(axis.unit);
        auto* box = new QDoubleSpinBox(this);
        box->setDecimals(unit.decimals(axis.decimals + 1));
        box->setRange(unit.shown(axis.min), unit.shown(axis.max));
        box->setSingleStep(unit.difference(unit.step(axis.snap)));
        box->setValue(unit.shown(axis.value));
        if (!axis.unit.isEmpty())
            box->setSuffix(QChar(0x00A0) + unit.text);
        box->setAccessibleName(handle.label + QStringLiteral(", ") + axis.label);
        box->setKeyboardTracking(false);
        box->installEventFilter(this);
        form->addRow(axis.label, box);
        boxes_.push_back({box, unit, axis.value, box->value()});
    }
    setFocusProxy(boxes_.front().box);
    boxes_.front().box->selectAll();
    adjustSize();
}

void ExactEntry::accept() {
    std::vector<double> values;
    for (const Box& entry : boxes_) {
        entry.box->interpretText();
        // Untouched it stays what it was, whatever the digits shown leave out.
        const double typed = entry.box->value();
        values.push_back(typed == entry.before ? entry.value : entry.unit.metric(typed));
    }
    Q_EMIT accepted(values);
    deleteLater();
    hide();
}

void ExactEntry::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        accept();
    } else if (event->key() == Qt::Key_Escape) {
        hide();
        deleteLater();
    } else {
        QFrame::keyPressEvent(event);
    }
}

bool ExactEntry::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::KeyPress) {
        auto* key = static_cast<QKeyEvent*>(event);
        if (key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter ||
            key->key() == Qt::Key_Escape) {
            keyPressEvent(key);
            return true;
        }
    } else if (event->type() == QEvent::FocusOut) {
        QWidget* next = QApplication::focusWidget();
        if (!next || !isAncestorOf(next)) {
            hide();
            deleteLater();
        }
    }
    return QFrame::eventFilter(watched, event);
}

} // namespace lobewright::ui
