#pragma once

#include <QString>

#include <vector>

namespace lobewright::ui {

/// How the window is divided for one kind of user.
struct Arrangement {
    struct Slot {
        QString view; ///< key of Views::View
        int share;    ///< of the height of its column
    };
    struct Column {
        int share; ///< of the width
        std::vector<Slot> rows;
    };
    enum class Side { none, numbers, limits, figures };

    QString key;   ///< kept between runs
    QString title; ///< "Designer"
    QString hint;
    Side side = Side::numbers;
    std::vector<Column> columns;
    int edition = 1; ///< raised with new panes: what was kept of the old ones does not fit them
};

/// Designer, student, port reviewer, performance, claims reviewer, durability, lobe maker, tasks,
/// unknowns.
const std::vector<Arrangement>& arrangements();

} // namespace lobewright::ui
