#pragma once

#include <QString>
#include <QStringList>
#include <QWidget>

#include <vector>

/// The numbers behind a view, for spreadsheets and data-frame libraries.
namespace lobewright::ui {

/// A heading for each column and the rows below it; numbers with a decimal point whatever the
/// language, an empty cell where there is no value.
struct DataSheet {
    QStringList headings;
    std::vector<QStringList> rows;

    bool isEmpty() const { return rows.empty(); }
};

/// A view that draws by itself and says what its drawing holds.
class DataSource {
  public:
    virtual ~DataSource() = default;
    virtual DataSheet dataSheet() const = 0;
};

/// A number as it stands in a sheet.
QString dataText(double value);

/// What the plots, tables and drawings of a view show now, the view itself included; curves that
/// share their abscissa share a sheet.
std::vector<DataSheet> dataOf(QWidget& view);

/// One sheet below the other, an empty line between; RFC 4180.
QString csvOf(const std::vector<DataSheet>& sheets);
/// The same with tabs, as spreadsheets paste it.
QString tabbedOf(const std::vector<DataSheet>& sheets);

} // namespace lobewright::ui
