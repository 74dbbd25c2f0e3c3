package drawwell.ui.parts

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.BoxWithConstraints
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import drawwell.surface.AmountColumn
import drawwell.surface.Event
import drawwell.ui.look.LocalLettering
import drawwell.ui.look.Measures
import drawwell.ui.look.largeType

/**
 * Steps under a column: less on the left, more on the right, finer while held; that it is not known between them, or
 * below where there is no room for three.
 */
@Composable
internal fun AmountSteps(amount: AmountColumn, send: (Event) -> Unit, modifier: Modifier = Modifier) {
    BoxWithConstraints(modifier) {
        val below = largeType() || maxWidth < Measures.target * 3 + Measures.apart * 2
        Column(verticalArrangement = Arrangement.spacedBy(Measures.apart)) {
            Row(Modifier.fillMaxWidth(), if (below) Arrangement.SpaceBetween else Arrangement.spacedBy(Measures.apart)) {
                SignButton(amount.less, send, held = amount.lessFine)
                if (!below) ActionButton(amount.unknown, send, Modifier.weight(1f), upright = true, style = LocalLettering.current.small)
                SignButton(amount.more, send, held = amount.moreFine)
            }
            if (below) ActionButton(amount.unknown, send, Modifier.fillMaxWidth())
        }
    }
}
