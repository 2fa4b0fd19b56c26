// Saving a table as CSV where the user says.
#pragma once

#include <QString>
#include <string>

class QWidget;

namespace loam::desk {

// Asks for a path, and before a file is replaced; replaces it in one step or leaves it as it was, and says so. Returns
// the path, empty where nothing was written.
QString export_csv_asking(const QString& title, const QString& suggested_name, const std::string& csv, QWidget* parent);

} // namespace loam::desk
