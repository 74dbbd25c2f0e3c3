package drawwell.ui.parts

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import drawwell.ui.look.Measures

/** What never scrolls away: the acts of the screen, back and undo with what stands beside them, and the places. */
@Composable
internal fun Foot(pane: Pane, pinned: @Composable () -> Unit = {}, beside: @Composable () -> Unit = {}) {
    Column(
        Modifier.padding(horizontal = Measures.margin, vertical = Measures.apart),
        Arrangement.spacedBy(Measures.apart),
    ) {
        pinned()
        ThumbRow(pane.frame, pane.send, beside)
    }
    PlacesBar(pane.frame.places, pane.send)
}
