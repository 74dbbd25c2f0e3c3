package drawwell.ui.parts

import androidx.compose.foundation.layout.width
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.unit.dp
import drawwell.surface.ChoiceRow
import drawwell.surface.Event
import drawwell.ui.look.LocalLettering
import drawwell.ui.look.largeType

/** Choices beside their label, so that a whole set-up lies under one thumb; under it where type is large. */
@Composable
internal fun SetUpRow(row: ChoiceRow, send: (Event) -> Unit) {
    if (largeType()) {
        ChoiceRowView(row, send)
        return
    }
    HandRow {
        Readable {
            Words(row.label, LocalLettering.current.label, Modifier.width(LABEL), soft = true)
        }
        ChoiceChips(row.options, send, Modifier.weight(1f))
    }
}

private val LABEL = 68.dp
