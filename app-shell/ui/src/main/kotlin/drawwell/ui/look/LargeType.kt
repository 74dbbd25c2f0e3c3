package drawwell.ui.look

import androidx.compose.runtime.Composable
import androidx.compose.ui.platform.LocalDensity

/** Whether type is so large that things which stood side by side go one under the other. */
@Composable
internal fun largeType(): Boolean = LocalDensity.current.fontScale > 1.3f
