package drawwell.ui.parts

import androidx.compose.runtime.Immutable
import drawwell.surface.Event
import drawwell.surface.Frame
import drawwell.ui.Told

/** What every screen is given besides its own content. */
@Immutable
internal data class Pane(
    val frame: Frame,
    val trouble: Told?,
    val dismissTrouble: () -> Unit,
    val send: (Event) -> Unit,
)
