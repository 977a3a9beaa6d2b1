// The page of kept texts.
'use strict';
globalThis.groundsheet.texts.show(document.getElementById('kept'));
