#pragma once

/// Room for the names of parts beside the engine in space [px].
namespace lobewright::ui::namesLayout {

inline constexpr double rim = 8.0;           ///< [px] round the picture
inline constexpr double footRoom = 24.0;     ///< [px] for the angle of the shaft
inline constexpr double besideEngine = 20.0; ///< [px] for leaders

} // namespace lobewright::ui::namesLayout
